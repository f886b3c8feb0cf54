package org.tenthwise.app.store.sqlite;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Optional;

/**
 * Where a store lies and what lies beside it.
 *
 * <p>The file is never opened past SQLite: closing it would drop the locks SQLite holds on it in the same process.
 *
 * @param path absolute, links followed
 */
record StoreFile(Path path) {

    /** Where the header of a SQLite file says what it takes to read it, and what stands there for a log beside it. */
    private static final int VERSION_TO_READ = 19;

    private static final byte WITH_LOG = 2;

    /** What of a file shows that it was written to. */
    record Stamp(long size, FileTime written) {}

    static StoreFile of(Path given) throws IOException {
        Path absolute = given.toAbsolutePath().normalize();
        if (Files.exists(absolute)) {
            return new StoreFile(absolute.toRealPath());
        }
        Path folder = absolute.getParent();
        boolean folderKnown = folder != null && Files.exists(folder);
        return new StoreFile(folderKnown ? folder.toRealPath().resolve(absolute.getFileName()) : absolute);
    }

    String name() {
        return path.getFileName().toString();
    }

    boolean exists() {
        return Files.exists(path);
    }

    /**
     * The file that is locked by whoever writes. It stays when the store is closed; only the lock on it means anything.
     */
    Path lock() {
        return beside(".lock");
    }

    /** Where a store is made before it gets its name, so that under its name it is whole or not there. */
    StoreFile inTheMaking() {
        return new StoreFile(beside(".new"));
    }

    /** Takes the file away, with what SQLite keeps beside it. */
    void discard() throws IOException {
        Files.deleteIfExists(path);
        Files.deleteIfExists(journal());
    }

    String urlToMake() {
        return url("mode=rwc");
    }

    String urlToWrite() {
        return url("mode=rw");
    }

    /** For reading what another process may be writing to. */
    String urlToShare() {
        return url("mode=ro");
    }

    /**
     * For reading a store nobody writes to: makes no file and takes no lock, so it works where nothing can be written.
     */
    String urlAtRest() {
        return url("immutable=1");
    }

    /**
     * What the file looks like while nobody writes to it and all of it is in the one file; absent while there is
     * something in the journal beside it, for an entry is being written then or was left unfinished, or in the log of a
     * store of an earlier release.
     */
    Optional<Stamp> atRest() throws IOException {
        if (size(journal()) > 0 || size(log()) > 0) {
            return Optional.empty();
        }
        BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
        return Optional.of(new Stamp(attributes.size(), attributes.lastModifiedTime()));
    }

    /**
     * Whether the file was last kept with a log beside it, as the first release did. Whoever writes to it here folded
     * that in, and the file is not opened past SQLite then.
     */
    boolean keptWithLog() throws IOException {
        if (StoreLock.isHeldHere(lock())) {
            return false;
        }
        try (InputStream in = Files.newInputStream(path)) {
            byte[] start = in.readNBytes(VERSION_TO_READ + 1);
            return start.length > VERSION_TO_READ && start[VERSION_TO_READ] == WITH_LOG;
        }
    }

    /** What stands beside is taken away by whoever closes the store last, at any moment. */
    private static long size(Path beside) throws IOException {
        try {
            return Files.size(beside);
        } catch (NoSuchFileException e) {
            return 0;
        }
    }

    /** What a page of the file was before the entry that is being written; empty once the entry is in the file. */
    private Path journal() {
        return beside("-journal");
    }

    private Path log() {
        return beside("-wal");
    }

    private Path beside(String ending) {
        return path.resolveSibling(name() + ending);
    }

    private String url(String how) {
        return "jdbc:sqlite:file://" + path.toUri().getRawPath() + "?" + how;
    }
}
