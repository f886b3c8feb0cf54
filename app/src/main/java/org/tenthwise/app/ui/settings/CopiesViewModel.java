package org.tenthwise.app.ui.settings;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.backup.BackupBook;
import org.tenthwise.app.backup.BackupSettings;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** Where second copies of the backups go. */
public final class CopiesViewModel {

    private record Loaded(Optional<Path> folder, List<String> said) {}

    private final BackupBook book;
    private final Callable<List<String>> backups;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final ReadOnlyObjectWrapper<List<String>> said = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Optional<Path>> folder = new ReadOnlyObjectWrapper<>(Optional.empty());

    /** @param backups what there is to say about them, a sentence each; looked up away from the screen */
    public CopiesViewModel(
            BackupBook book, Callable<List<String>> backups, LedgerTasks tasks, Words words, Navigator navigator) {
        this.book = book;
        this.backups = backups;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
    }

    /** What there is to say about the backups, a sentence each. */
    public ReadOnlyObjectProperty<List<String>> saidProperty() {
        return said.getReadOnlyProperty();
    }

    /** Where second copies go; absent where none are made. */
    public ReadOnlyObjectProperty<Optional<Path>> folderProperty() {
        return folder.getReadOnlyProperty();
    }

    ObservableValue<String> value() {
        return folder.map(to -> to.map(Path::toString).orElseGet(() -> words.say("settings.copies.none")));
    }

    void load() {
        tasks.run(() -> new Loaded(book.settings().folder(), backups.call()), loaded -> {
            folder.set(loaded.folder());
            said.set(loaded.said());
        });
    }

    /** Looks for a folder, from the one named before or from home. */
    public void choose() {
        navigator.folder(
                folder.get().orElseGet(() -> Path.of(System.getProperty("user.home"))),
                chosen -> keep(Optional.of(chosen)));
    }

    public void none() {
        keep(Optional.empty());
    }

    private void keep(Optional<Path> to) {
        tasks.run(
                () -> {
                    book.settings(new BackupSettings(to, book.settings().kept()));
                    return true;
                },
                done -> load());
    }
}
