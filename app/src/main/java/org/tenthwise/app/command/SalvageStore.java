package org.tenthwise.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.tenthwise.app.store.CouldNotCopy;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.Salvage;
import org.tenthwise.app.store.Stores;
import org.tenthwise.model.run.Entry;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes out of a damaged store what still chains. */
@Command(
        name = "salvage",
        customSynopsis = "tenthwise salvage FILE --store DB",
        description = "Takes out of a damaged store what still chains: every entry before the first that is not "
                + "as it was written, as it is. Tells run by run what came of it. The damaged store is left as it is.")
final class SalvageStore implements Callable<Integer> {

    private final Stores stores;

    @Parameters(paramLabel = "FILE", description = "Damaged store.")
    private Path damaged = Path.of("");

    @Option(
            names = "--store",
            paramLabel = "DB",
            required = true,
            description = "Store to make; nothing may lie there yet.")
    private Path store = Path.of("");

    @Spec
    private CommandSpec spec;

    SalvageStore(Stores stores) {
        this.stores = stores;
    }

    @Override
    public Integer call() throws CouldNotOpen, CouldNotCopy {
        Salvage made = stores.salvage(damaged, store);
        PrintWriter to = spec.commandLine().getOut();
        made.fault().ifPresent(fault -> to.println("%s is not whole. %s".formatted(damaged, fault.why())));
        to.println("%s has %s, the last with hash %s."
                .formatted(store, entries(made.head().seq()), made.head().hash()));
        made.runs().stream()
                .filter(run -> !run.run().equals(Entry.SHOP))
                .map(SalvageStore::line)
                .forEach(to::println);
        return made.fault().isEmpty() ? Exit.WELL : Exit.NOT_WELL;
    }

    private static String line(Salvage.OfRun run) {
        return "Run %s: %s%s%s"
                .formatted(
                        run.run(),
                        entries(run.kept()),
                        run.behind() == 0
                                ? "."
                                : ". Behind the damage %s of it stand as they were written and were not taken over."
                                        .formatted(entries(run.behind())),
                        run.provesItself() ? "" : " Entries between them are missing or changed.");
    }

    private static String entries(long count) {
        return count == 1 ? "1 entry" : count + " entries";
    }
}
