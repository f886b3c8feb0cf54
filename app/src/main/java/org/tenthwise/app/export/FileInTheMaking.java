package org.tenthwise.app.export;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.stream.IntStream;

/**
 * A file that is written whole and on the disk under a name of its own before it gets the name it is to have, and never
 * takes the place of another. While it is written its maker holds a lock on it: one without is left over from a maker
 * that was killed.
 */
final class FileInTheMaking implements AutoCloseable {

    private static final String BEFORE = ".tenthwise-";
    private static final String AFTER = ".new";
    private static final int MOST_OF_A_NAME = 1_000;

    private final Path folder;
    private final String name;
    private final String ending;
    private final Path making;
    private final FileChannel channel;

    /** Another is making the same file at this moment. */
    static final class BeingMade extends FileSystemException {

        private static final long serialVersionUID = 1L;

        BeingMade(Path making) {
            super(making.toString());
        }
    }

    /** @throws BeingMade if another is making it */
    FileInTheMaking(Path folder, String name, String ending) throws IOException {
        this.folder = folder;
        this.name = name;
        this.ending = ending;
        this.making = folder.resolve(BEFORE + name + "." + ending + AFTER);
        this.channel = FileChannel.open(making, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        if (!locked(channel)) {
            channel.close();
            throw new BeingMade(making);
        }
        channel.truncate(0);
    }

    /** Takes away what makers that were killed have left in a folder. */
    static void clearLeftOver(Path folder) throws IOException {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, BEFORE + "*" + AFTER)) {
            for (Path file : left) {
                if (Files.isRegularFile(file) && leftOver(file)) {
                    Files.deleteIfExists(file);
                }
            }
        }
    }

    private static boolean leftOver(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            return locked(channel);
        }
    }

    private static boolean locked(FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    void write(Exporter.Content content) throws IOException {
        OutputStream out = Channels.newOutputStream(channel);
        content.write(out);
        out.flush();
        channel.force(true);
    }

    /**
     * Gives it its name, with a number behind where a different file has that name. One with the very same bytes is
     * left as it is.
     *
     * @return where the bytes now lie
     */
    Path put() throws IOException {
        channel.close();
        for (Path file :
                (Iterable<Path>) IntStream.rangeClosed(1, MOST_OF_A_NAME).mapToObj(this::named)::iterator) {
            if (Files.isRegularFile(file) && Files.mismatch(making, file) < 0) {
                return file;
            }
            if (placed(file)) {
                return file;
            }
        }
        throw new FileAlreadyExistsException(named(1).toString());
    }

    private boolean placed(Path file) throws IOException {
        try {
            Files.move(making, file);
            return true;
        } catch (FileAlreadyExistsException e) {
            return false;
        }
    }

    private Path named(int number) {
        return folder.resolve(name + (number == 1 ? "" : "-" + number) + "." + ending);
    }

    /** Takes away what is left of it; one that has its name is not there any more. */
    @Override
    public void close() throws IOException {
        channel.close();
        Files.deleteIfExists(making);
    }
}
