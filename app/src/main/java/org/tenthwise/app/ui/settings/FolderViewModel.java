package org.tenthwise.app.ui.settings;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.words.Words;

/** A folder is looked for, from one to those in it or to the one it lies in, and chosen. */
public final class FolderViewModel {

    /**
     * What lies in a folder.
     *
     * @param at absent where the drives themselves are listed
     * @param inside folders, by name
     */
    public record FolderPlace(Optional<Path> at, List<Path> inside) {

        public FolderPlace {
            inside = List.copyOf(inside);
        }
    }

    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final Consumer<Path> chosen;
    private final ReadOnlyObjectWrapper<FolderPlace> place;

    /** @param start where to begin; the next folder above it that is there */
    public FolderViewModel(Path start, LedgerTasks tasks, Words words, Navigator navigator, Consumer<Path> chosen) {
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        this.chosen = chosen;
        this.place = new ReadOnlyObjectWrapper<>(new FolderPlace(
                Stream.iterate(Optional.of(start.toAbsolutePath()), Optional::isPresent, at -> at.map(Path::getParent))
                        .flatMap(Optional::stream)
                        .filter(Files::isDirectory)
                        .findFirst(),
                List.of()));
    }

    public ReadOnlyObjectProperty<FolderPlace> placeProperty() {
        return place.getReadOnlyProperty();
    }

    public void load() {
        look(place.get().at());
    }

    public void into(Path folder) {
        look(Optional.of(folder));
    }

    public void up() {
        look(place.get().at().map(Path::getParent));
    }

    /** Chooses the folder that is looked at, if something can be written there. */
    public void choose() {
        place.get()
                .at()
                .ifPresent(at -> tasks.run(() -> Files.isWritable(at), can -> {
                    if (can) {
                        chosen.accept(at);
                        navigator.back();
                    } else {
                        navigator.tell(Notice.plain(
                                words.say("folder.not-taken"),
                                words.say("folder.read-only", at),
                                words.say("shell.understood")));
                    }
                }));
    }

    private void look(Optional<Path> at) {
        tasks.run(() -> new FolderPlace(at, inside(at)), place::set);
    }

    /** A folder that cannot be looked into has nothing in it. */
    private static List<Path> inside(Optional<Path> at) {
        if (at.isEmpty()) {
            return StreamSupport.stream(
                            FileSystems.getDefault().getRootDirectories().spliterator(), false)
                    .toList();
        }
        try (Stream<Path> all = Files.list(at.get())) {
            return all.filter(Files::isDirectory)
                    .filter(folder -> !folder.getFileName().toString().startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }
}
