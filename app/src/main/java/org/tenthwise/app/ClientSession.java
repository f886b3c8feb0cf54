package org.tenthwise.app;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javafx.application.Platform;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.ui.shell.Shell;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.unopened.UnopenedScreen;
import org.tenthwise.model.words.Words;

/**
 * The client while its window is open: first the store, then the screens; why there is no store where it cannot be
 * opened.
 */
final class ClientSession {

    /** Shows the first screen over a ledger that is open. Called on the screen's thread. */
    interface Screens {
        void start(Ledger ledger, Background background);
    }

    private final Shell shell;
    private final Look look;
    private final Words words;
    private final Stores stores;
    private final Path store;
    private final LedgerThread thread;
    private final Screens screens;
    private final AtomicReference<Optional<Ledger>> ledger = new AtomicReference<>(Optional.empty());
    private final AtomicReference<Optional<CouldNotOpen>> refusal = new AtomicReference<>(Optional.empty());

    ClientSession(
            Shell shell, Look look, Words words, Stores stores, Path store, LedgerThread thread, Screens screens) {
        this.shell = shell;
        this.look = look;
        this.words = words;
        this.stores = stores;
        this.store = store;
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
        Ledger opened = stores.open(store);
        ledger.set(Optional.of(opened));
        refusal.set(Optional.empty());
        return opened;
    }

    private void unopened(Exception failure) {
        if (failure instanceof CouldNotOpen why) {
            refusal.set(Optional.of(why));
            shell.replace(new UnopenedScreen(
                    words, why.getMessage(), store.toAbsolutePath().toString(), this::begin, () -> shell.scene()
                            .getWindow()
                            .hide()));
        } else {
            shell.trouble();
        }
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
            ledger.get().ifPresent(Ledger::close);
            return true;
        });
        thread.end();
        if (refusal.get().isPresent()) {
            throw refusal.get().get();
        }
    }
}
