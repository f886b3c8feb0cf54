package org.tenthwise.app.command;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.key.KeyWords;
import org.tenthwise.app.key.NoKey;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.words.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints by what the key of a store's station is known, and its public half; makes another where that is asked for. */
@Command(name = "key", customSynopsis = "tenthwise key --store DB [--new]")
final class ShowKey implements Callable<Integer> {

    private final Tools with;

    @Option(names = "--store", paramLabel = "DB", required = true)
    private Path store = Path.of("");

    @Option(names = "--new")
    private boolean another;

    @Spec
    private CommandSpec spec;

    ShowKey(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotOpen, CouldNotRun, NoKey {
        if (!Files.exists(store)) {
            throw new CouldNotRun(Message.of("store.not-found", store));
        }
        KeyFile file = KeyFile.beside(store);
        PrintWriter to = spec.commandLine().getOut();
        if (another) {
            makeAnother(file, to);
        }
        String pem = new String(file.open().shown().pem(), US_ASCII);
        new KeyWords(with.words()).say(file).forEach(to::println);
        pem.lines().forEach(to::println);
        return Exit.WELL;
    }

    /** While the store is held, so that no client signs with the key before. */
    private void makeAnother(KeyFile file, PrintWriter to) throws CouldNotOpen, NoKey {
        boolean before = file.isThere();
        Ledger held = with.stores().open(store); // makes one itself where none was ever needed
        try {
            if (before || !file.isThere()) {
                file.renew().ifPresent(aside -> to.println(with.words().say("command.key.put-aside", aside)));
            }
            to.println(with.words().say("command.key.made"));
        } finally {
            held.close();
        }
    }
}
