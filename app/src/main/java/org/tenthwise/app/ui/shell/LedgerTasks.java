package org.tenthwise.app.ui.shell;

import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.tenthwise.app.export.CouldNotExport;
import org.tenthwise.app.key.NoKey;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.session.Reply;
import org.tenthwise.app.session.State;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.NotImported;
import org.tenthwise.app.text.Objections;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Words;

/** Sends work to the thread of the ledger. What could not be done is told as a message that stays until answered. */
public final class LedgerTasks {

    private final Background background;
    private final Words words;
    private final Navigator navigator;

    public LedgerTasks(Background background, Words words, Navigator navigator) {
        this.background = background;
        this.words = words;
        this.navigator = navigator;
    }

    /** @param done on the screen thread, with what came of the work */
    public <T> void run(Callable<T> work, Consumer<T> done) {
        run(work, done, () -> {});
    }

    /** @param either on the screen thread before {@code done} or the message: whether the work was done or not */
    public <T> void run(Callable<T> work, Consumer<T> done, Runnable either) {
        background.run(
                work,
                outcome -> {
                    either.run();
                    done.accept(outcome);
                },
                failure -> {
                    either.run();
                    navigator.tell(message(failure));
                });
    }

    /** @param failed on the screen thread, when the work could not be done; the message is told first */
    public <T> void runOr(Callable<T> work, Consumer<T> done, Runnable failed) {
        background.run(work, done, failure -> {
            navigator.tell(message(failure));
            failed.run();
        });
    }

    /**
     * Asks something of the run in hand. A refusal is told as a message too.
     *
     * @param taken on the screen thread, when it is on the disk
     */
    public void ask(Callable<Reply> verb, Consumer<State> taken, Runnable either) {
        run(
                verb,
                reply -> reply.objection()
                        .ifPresentOrElse(
                                objection ->
                                        navigator.tell(told("errand.refused", new Objections(words).say(objection))),
                                () -> taken.accept(reply.state())),
                either);
    }

    private Notice message(Exception failure) {
        if (failure instanceof CouldNotSave why) {
            return told("errand.not-saved", words.say(why.why()));
        }
        if (failure instanceof CouldNotRead why) {
            return told("errand.not-read", words.say(why.why()));
        }
        if (failure instanceof CouldNotExport why) {
            return told("errand.not-exported", words.say(why.why()));
        }
        if (failure instanceof NotImported why) {
            return told("errand.not-imported", words.say(why.why()));
        }
        if (failure instanceof NoKey why) {
            return told("key.none", words.say(why.why()));
        }
        if (failure instanceof Refused why) {
            return told("errand.refused", words.say(why.why()));
        }
        return told("shell.trouble", words.say("shell.trouble.next"));
    }

    private Notice told(String title, String sentence) {
        return Notice.plain(words.say(title), sentence, words.say("shell.understood"));
    }
}
