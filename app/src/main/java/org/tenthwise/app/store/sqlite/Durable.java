package org.tenthwise.app.store.sqlite;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Names of files and folders that are still there after the power went: a folder is synchronised like a file. */
final class Durable {

    private Durable() {}

    /** Makes a folder, with those that lead to it. */
    static void folders(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            folders(folder.getParent());
            Files.createDirectories(folder);
            synchronise(folder.getParent());
        }
    }

    /** Gives a file that is itself on the disk its name. */
    static void name(Path file, Path name) throws IOException {
        Files.move(file, name, StandardCopyOption.ATOMIC_MOVE);
        synchronise(name.getParent());
    }

    /** Where the system does not open a folder it keeps the names in it by itself. */
    private static void synchronise(Path folder) throws IOException {
        FileChannel channel;
        try {
            channel = FileChannel.open(folder, StandardOpenOption.READ);
        } catch (IOException e) {
            return;
        }
        try (channel) {
            channel.force(true);
        }
    }
}
