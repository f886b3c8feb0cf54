package org.tenthwise.app.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.tenthwise.app.store.CouldNotCopy;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.Verification;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Copies a store into a file. */
@Command(name = "backup", customSynopsis = "tenthwise backup --store DB --to FILE")
final class BackUpStore implements Callable<Integer> {

    private final Tools with;

    @Option(names = "--store", paramLabel = "DB", required = true)
    private Path store = Path.of("");

    @Option(names = "--to", paramLabel = "FILE", required = true)
    private Path to = Path.of("");

    @Spec
    private CommandSpec spec;

    BackUpStore(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotOpen, CouldNotCopy {
        Verification made = with.stores().copy(store, to);
        spec.commandLine()
                .getOut()
                .println(with.words()
                        .say(
                                "command.backup.done",
                                to,
                                made.entries(),
                                made.head().hash()));
        return Exit.WELL;
    }
}
