package org.tenthwise.app;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javafx.application.Platform;
import org.tenthwise.app.backup.StoreCare;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.text.Spoken;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.app.ui.shell.Shell;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.unopened.UnopenedScreen;

/**
 * The client while its window is open: first the store, then the screens; why there is no store where it cannot be
 * opened.
 */
final class ClientSession {

    /** Shows the first screen over a ledger that is open. Called on the screen's thread. */
    interface FirstScreen {
        void start(Ledger ledger, Background background);
    }

    private final Shell shell;
    private final Look look;
    private final Spoken spoken;
    private final Stores stores;
    private final Path store;
    private final Optional<StoreCare> care;
    private final LedgerThread thread;
    private final FirstScreen screens;
    private final AtomicReference<Optional<Ledger>> ledger = new AtomicReference<>(Optional.empty());
    private final AtomicReference<Optional<CouldNotOpen>> refusal = new AtomicReference<>(Optional.empty());

    ClientSession(
            Shell shell,
            Look look,
            Spoken spoken,
            Stores stores,
            Path store,
            Optional<StoreCare> care,
            LedgerThread thread,
            FirstScreen screens) {
        this.shell = shell;
        this.look = look;
        this.spoken = spoken;
        this.stores = stores;
        this.store = store;
        this.care = care;
        this.thread = thread;
        this.screens = screens;
    }

    Shell shell() {
        return shell;
    }

    Look look() {
        return look;
    }

    /** Opens the store away from the screen; on the screen's thread. */
    void begin() {
        Background background = new Background(thread, Platform::runLater);
        background.run(this::openStore, opened -> screens.start(opened, background), this::unopened);
    }

    private Ledger openStore() throws CouldNotOpen {
        Ledger opened = care.isPresent()
                ? care.get()
                        .open(
                                why -> Platform.runLater(() -> shut(why)),
                                why -> Platform.runLater(() -> tell("backup.failed", why)),
                                what -> Platform.runLater(() -> tell(
                                        "store.gone-back.title", spoken.words().say(what))))
                : stores.open(store);
        stores.unsealed(store)
                .ifPresent(why ->
                        Platform.runLater(() -> tell("key.title", spoken.words().say(why))));
        ledger.set(Optional.of(opened));
        refusal.set(Optional.empty());
        return opened;
    }

    private void unopened(Exception failure) {
        if (failure instanceof CouldNotOpen why) {
            shell.replace(unopened(why));
        } else {
            shell.trouble();
        }
    }

    private UnopenedScreen unopened(CouldNotOpen why) {
        refusal.set(Optional.of(why));
        return new UnopenedScreen(
                spoken.words(),
                spoken.words().say(why.why()),
                store.toAbsolutePath().toString(),
                this::begin,
                () -> shell.scene().getWindow().hide());
    }

    /** Closes a store that was found not to be whole while it was open; nothing more is written behind that. */
    private void shut(CouldNotOpen why) {
        UnopenedScreen instead = unopened(why);
        shell.backTo(instead);
        shell.replace(instead);
        thread.execute(this::close);
    }

    private void tell(String title, String what) {
        shell.tell(Notice.plain(spoken.words().say(title), what, spoken.words().say("shell.understood")));
    }

    private void close() {
        ledger.getAndSet(Optional.empty()).ifPresent(Ledger::close);
    }

    /** The ledger, once it is open. */
    Ledger ledger() {
        return ledger.get().orElseThrow();
    }

    /**
     * Closes the store once everything given to it is done.
     *
     * @throws CouldNotOpen if it never was open
     */
    void end() throws Exception {
        thread.ask(() -> {
            close();
            return true;
        });
        thread.end();
        if (care.isPresent()) {
            care.get().end();
        }
        if (refusal.get().isPresent()) {
            throw refusal.get().get();
        }
    }
}
