package org.tenthwise.app.store.sqlite;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The right to write to a store. The system takes it back when the process ends, however it ends. */
final class StoreLock implements AutoCloseable {

    /**
     * Locks this process holds. The system knows a lock by process, not by who asked: closing a second channel on a
     * locked file drops the lock of the first, so a second asker in this process must be turned away before it opens
     * the file. That is a fact about the process, hence static.
     */
    private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

    private final Path path;
    private final FileChannel channel;

    private StoreLock(Path path, FileChannel channel) {
        this.path = path;
        this.channel = channel;
    }

    /** Absent if another holds it, in this process or any other. */
    static Optional<StoreLock> take(Path path) throws IOException {
        if (!HELD_HERE.add(path)) {
            return Optional.empty();
        }
        boolean taken = false;
        try {
            FileChannel channel = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            try {
                FileLock lock = channel.tryLock();
                taken = lock != null;
            } finally {
                if (!taken) {
                    channel.close();
                }
            }
            return taken ? Optional.of(new StoreLock(path, channel)) : Optional.empty();
        } finally {
            if (!taken) {
                HELD_HERE.remove(path);
            }
        }
    }

    /** Whether this process holds it. */
    static boolean isHeldHere(Path path) {
        return HELD_HERE.contains(path);
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } finally {
            HELD_HERE.remove(path);
        }
    }
}
