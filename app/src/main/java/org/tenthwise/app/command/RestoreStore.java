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
@Command(name = "restore", customSynopsis = "tenthwise restore FILE --store DB")
final class RestoreStore implements Callable<Integer> {

    private final Tools with;

    @Parameters(paramLabel = "FILE", descriptionKey = "file")
    private Path backup = Path.of("");

    @Option(names = "--store", paramLabel = "DB", required = true)
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
