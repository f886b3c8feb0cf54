package org.tenthwise.app.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.tenthwise.app.store.CouldNotCopy;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.Verification;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a store of a backup. */
@Command(
        name = "restore",
        customSynopsis = "tenthwise restore FILE --store DB",
        description = "Makes a store of a backup, up to the last entry that is in it. Never over a file that is there.")
final class RestoreStore implements Callable<Integer> {

    private final Tools with;

    @Parameters(paramLabel = "FILE", description = "Backup, or any other copy of a store.")
    private Path backup = Path.of("");

    @Option(
            names = "--store",
            paramLabel = "DB",
            required = true,
            description = "Store to make; nothing may lie there yet.")
    private Path store = Path.of("");

    @Spec
    private CommandSpec spec;

    RestoreStore(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotOpen, CouldNotCopy {
        Verification made = with.stores().copy(backup, store);
        spec.commandLine()
                .getOut()
                .println(with.words()
                        .say(
                                "command.restore.done",
                                store,
                                backup,
                                made.entries(),
                                made.head().hash()));
        return Exit.WELL;
    }
}
