package org.tenthwise.app.backup;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.tenthwise.app.store.CouldNotCopy;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Stores;
import org.tenthwise.model.words.Words;

/**
 * Backups of one store: in a folder beside it, and in one that is named. Each is verified before it has its name; older
 * ones go once a new one is there, and only those that hold nothing this store has not.
 */
public final class Backups {

    private static final Duration OFTEN_ENOUGH = Duration.ofDays(1);
    private static final String HALF = ".new";

    private final Stores stores;
    private final Path store;
    private final BackupBook book;
    private final Supplier<Words> words;
    private final Clock clock;

    /** @param words what goes wrong is said in, as things stand then */
    public Backups(Stores stores, Path store, BackupBook book, Supplier<Words> words, Clock clock) {
        this.stores = stores;
        this.store = store.toAbsolutePath().normalize();
        this.book = book;
        this.words = words;
        this.clock = clock;
    }

    /** The folder beside the store. */
    public Path beside() {
        return store.resolveSibling(store.getFileName() + "-backups");
    }

    public BackupSettings settings() {
        return book.settings();
    }

    public BackupState state() {
        return book.state(store);
    }

    /** Whether the last one is a day old, failed, or was made by a clock that is not to be relied on. */
    boolean isDue() {
        BackupState state = book.state(store);
        return state.failure().isPresent()
                || state.made()
                        .filter(made ->
                                Duration.between(made, clock.instant()).abs().compareTo(OFTEN_ENOUGH) < 0)
                        .isEmpty();
    }

    /** Makes one in every place where there is none of what the store holds now; of an empty store none. */
    BackupState make() {
        Optional<Instant> made = book.state(store).made();
        Optional<String> failure;
        try (KeptEntries kept = stores.openToRead(store)) {
            Head head = kept.head();
            if (head.equals(Head.OF_NOTHING)) {
                failure = Optional.empty();
            } else {
                Instant now = clock.instant();
                failure = make(BackupName.of(store.getFileName().toString(), now, head), kept);
                made = failure.isEmpty() ? Optional.of(now) : made;
            }
        } catch (CouldNotOpen | CouldNotCopy | CouldNotRead e) {
            failure = Optional.of(words.get().say(e.why()));
        } catch (IOException | UncheckedIOException e) {
            failure = Optional.of(words.get().say("backup.not-listed", e.getMessage()));
        }
        BackupState state = new BackupState(made, failure);
        book.state(store, state);
        return state;
    }

    private Optional<String> make(BackupName name, KeptEntries kept) throws CouldNotOpen, CouldNotCopy, IOException {
        BackupName made = make(name, store, beside(), kept);
        Optional<Path> folder = book.settings().folder();
        if (folder.isPresent() && !Files.isDirectory(folder.get())) {
            return Optional.of(words.get().say("backup.no-folder", folder.get(), beside()));
        }
        if (folder.isPresent()) {
            make(made, beside().resolve(made.file()), folder.get(), kept);
        }
        return Optional.empty();
    }

    /** @return the backup that is in the place then */
    private BackupName make(BackupName name, Path from, Path place, KeptEntries kept)
            throws CouldNotOpen, CouldNotCopy, IOException {
        List<BackupName> there = in(place, kept);
        Optional<BackupName> same = there.stream().filter(name::holdsTheSameAs).findFirst();
        if (same.isPresent()) {
            return same.get();
        }
        Path copy = place.resolve(name.file());
        BackupName made = name.upTo(stores.copy(from, copy).head());
        Files.move(copy, place.resolve(made.file()), StandardCopyOption.ATOMIC_MOVE);
        prune(place, kept);
        return made;
    }

    private void prune(Path place, KeptEntries kept) throws IOException {
        List<BackupName> newestFirst = new ArrayList<>(in(place, kept));
        newestFirst.sort(Comparator.comparingLong(BackupName::entries)
                .thenComparing(BackupName::at)
                .reversed());
        for (BackupName old :
                newestFirst.subList(Math.min(book.settings().kept(), newestFirst.size()), newestFirst.size())) {
            Files.deleteIfExists(place.resolve(old.file()));
        }
        for (String half : names(place, HALF)) {
            if (BackupName.in(half).filter(name -> name.isIn(kept)).isPresent()) {
                Files.deleteIfExists(place.resolve(half + HALF));
                Files.deleteIfExists(place.resolve(half + HALF + "-journal"));
            }
        }
    }

    /** Those in a place that hold what this store holds, or held once; others are nobody's to take away. */
    private static List<BackupName> in(Path place, KeptEntries kept) throws IOException {
        return names(place, "").stream()
                .flatMap(file -> BackupName.in(file).stream())
                .filter(name -> name.isIn(kept))
                .toList();
    }

    /** Names of files that end so, without that ending. */
    private static List<String> names(Path place, String ending) throws IOException {
        if (!Files.isDirectory(place)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(place)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(file -> file.endsWith(ending))
                    .map(file -> file.substring(0, file.length() - ending.length()))
                    .toList();
        }
    }
}
