package org.tenthwise.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tenthwise.app.export.MattersTable;
import org.tenthwise.app.matters.OpenMatter;
import org.tenthwise.app.matters.OpenMatters;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.KeptEntries;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes what is open in all runs of a store as one table. Reads the store alone. */
@Command(name = "matters", customSynopsis = "tenthwise matters --store DB [--part P] [--person N] [--all]")
final class ShowMatters implements Callable<Integer> {

    private final Tools with;

    @Option(names = "--store", paramLabel = "DB", required = true)
    private Path store = Path.of("");

    @Option(names = "--part", paramLabel = "P")
    private Optional<String> part = Optional.empty();

    @Option(names = "--person", paramLabel = "N")
    private Optional<String> person = Optional.empty();

    @Option(names = "--all")
    private boolean all;

    @Spec
    private CommandSpec spec;

    ShowMatters(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotOpen, CouldNotRun, IOException {
        PrintWriter out = spec.commandLine().getOut();
        try (KeptEntries kept = with.stores().openToRead(store)) {
            Intact.forLists(kept, store);
            MattersTable table = new MattersTable(out);
            for (OpenMatter matter : new OpenMatters(kept).all(part, person)) {
                if (all || matter.isOpen()) {
                    table.write(matter);
                }
            }
            out.flush();
            List<String> unjudged = kept.history().unjudged();
            unjudged.forEach(
                    run -> spec.commandLine().getErr().println(with.words().say("command.history.unjudged", run)));
            return unjudged.isEmpty() ? Exit.WELL : Exit.NOT_WELL;
        }
    }
}
