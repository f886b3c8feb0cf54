package org.tenthwise.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.tenthwise.app.export.CouldNotExport;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.KeptEntries;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes what was found in all runs of a store, or in some, as one table. Reads the store alone. */
@Command(
        name = "history",
        customSynopsis = {
            "tenthwise history --store DB [--view VIEW] [--as FORMAT [--out DIR]] [--part P]",
            "  [--serial S] [--lot L] [--machine M] [--gauge G] [--person N] [--from DAY] [--to DAY]",
            "  [--verdict V] [--kind KIND] [--characteristic C] [--balloon B] [--designator D]",
            "  [--size WHICH] [--across REASONS] [--required INDEX]"
        })
final class ShowHistory implements Callable<Integer> {

    private final Tools with;

    @Option(names = "--store", paramLabel = "DB", required = true)
    private Path store = Path.of("");

    @Mixin
    private HistoryFilters filters = new HistoryFilters();

    @Mixin
    private HistoryViews views = new HistoryViews();

    @Spec
    private CommandSpec spec;

    ShowHistory(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotRun, CouldNotOpen, CouldNotExport, IOException {
        filters.check();
        PrintWriter out = spec.commandLine().getOut();
        try (KeptEntries kept = with.stores().openToRead(store)) {
            Intact.forLists(kept, store);
            if (views.areFiles()) {
                views.files(kept.history(), filters, with.views()).forEach(out::println);
            } else {
                views.write(kept.history(), filters, with.sums(), out);
            }
            out.flush();
            List<String> unjudged = kept.history().unjudged();
            unjudged.forEach(
                    run -> spec.commandLine().getErr().println(with.words().say("command.history.unjudged", run)));
            return unjudged.isEmpty() ? Exit.WELL : Exit.NOT_WELL;
        }
    }
}
