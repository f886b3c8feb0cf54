package org.tenthwise.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.tenthwise.app.store.CouldNotCopy;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.Salvage;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.words.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes out of a damaged store what still chains. */
@Command(name = "salvage", customSynopsis = "tenthwise salvage FILE --store DB")
final class SalvageStore implements Callable<Integer> {

    private final Tools with;

    @Parameters(paramLabel = "FILE", descriptionKey = "file")
    private Path damaged = Path.of("");

    @Option(names = "--store", paramLabel = "DB", required = true)
    private Path store = Path.of("");

    @Spec
    private CommandSpec spec;

    SalvageStore(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotOpen, CouldNotCopy {
        Salvage made = with.stores().salvage(damaged, store);
        PrintWriter to = spec.commandLine().getOut();
        made.fault().ifPresent(fault -> to.println(with.words().say("command.verify.not-whole", damaged, fault.why())));
        to.println(with.words()
                .say(Message.of("command.salvage.done", store)
                        .with("n", made.head().seq())
                        .with("hash", made.head().hash())));
        made.runs().stream()
                .filter(run -> !run.run().equals(Entry.SHOP))
                .forEach(run -> to.println(with.words().say(line(run))));
        return made.fault().isEmpty() ? Exit.WELL : Exit.NOT_WELL;
    }

    private static Message line(Salvage.OfRun run) {
        Message kept = Message.of("command.salvage.run", run.run())
                .with("kept", run.kept())
                .with("behind", run.behind());
        return run.provesItself() ? kept : kept.and(Message.of("command.salvage.lacking"));
    }
}
