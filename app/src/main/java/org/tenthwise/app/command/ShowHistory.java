package org.tenthwise.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tenthwise.app.export.HistoryTable;
import org.tenthwise.app.history.ReadingQuery;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.words.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes what was read in all runs of a store, or in some, as one table. Reads the store alone. */
@Command(
        name = "history",
        customSynopsis = {
            "tenthwise history --store DB [--part P] [--serial S] [--gauge G] [--person N]",
            "  [--from DAY] [--to DAY] [--characteristic C] [--balloon B]",
            "  [--designator D]"
        })
final class ShowHistory implements Callable<Integer> {

    private final Tools with;

    @Option(names = "--store", paramLabel = "DB", required = true)
    private Path store = Path.of("");

    @Option(names = "--part", paramLabel = "P")
    private Optional<String> part = Optional.empty();

    @Option(names = "--serial", paramLabel = "S")
    private Optional<String> serial = Optional.empty();

    @Option(names = "--gauge", paramLabel = "G")
    private Optional<String> gauge = Optional.empty();

    @Option(names = "--person", paramLabel = "N")
    private Optional<String> person = Optional.empty();

    @Option(names = "--from", paramLabel = "DAY")
    private Optional<LocalDate> from = Optional.empty();

    @Option(names = "--to", paramLabel = "DAY")
    private Optional<LocalDate> to = Optional.empty();

    @Option(names = "--characteristic", paramLabel = "C")
    private Optional<String> characteristic = Optional.empty();

    @Option(names = "--balloon", paramLabel = "B")
    private Optional<String> balloon = Optional.empty();

    @Option(names = "--designator", paramLabel = "D")
    private Optional<String> designator = Optional.empty();

    @Spec
    private CommandSpec spec;

    ShowHistory(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotRun, CouldNotOpen, IOException {
        if (from.isPresent() && to.isPresent() && from.get().isAfter(to.get())) {
            throw new CouldNotRun(Message.of("command.history.days-turned-round", from.get(), to.get()));
        }
        PrintWriter out = spec.commandLine().getOut();
        try (KeptEntries kept = with.stores().openToRead(store)) {
            kept.history()
                    .readings(
                            new ReadingQuery(
                                    part, serial, gauge, person, from, to, characteristic, balloon, designator),
                            new HistoryTable(out, kept.history()::plan));
            out.flush();
            List<String> unjudged = kept.history().unjudged();
            unjudged.forEach(
                    run -> spec.commandLine().getErr().println(with.words().say("command.history.unjudged", run)));
            return unjudged.isEmpty() ? Exit.WELL : Exit.NOT_WELL;
        }
    }
}
