package org.tenthwise.app.store.sqlite;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.store.CouldNotCopy;

/** A process of its own that copies a store, and says why it could not and what is left in the folder of the copy. */
final class Copying {

    /** Enough for some of the store and not for all of it. */
    private static final String SMALL = "1m";

    private Copying() {}

    static Process of(Path store, Path to, Path room) throws IOException {
        return new ProcessBuilder(java(store, to, room))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    /**
     * In a mount space of its own, so that the disk is gone with the process.
     *
     * @param how "full" for a disk too small, "pulled" for one that is large enough and taken away half-way
     */
    static Process onASmallDisk(Path store, Path disk, String how, Path room) throws IOException {
        Path to = disk.resolve("copy.db");
        String mount = "mount -t tmpfs -o size=%s none '%s'".formatted(how.equals("full") ? SMALL : "64m", disk);
        String copy = String.join(
                " ",
                java(store, to, room).stream().map(word -> "'" + word + "'").toList());
        String pull = "( while [ ! -e '%s.new' ]; do :; done; umount -l '%s' ) & ".formatted(to, disk);
        return new ProcessBuilder("unshare", "-m", "sh", "-c", mount + " && " + (how.equals("full") ? "" : pull) + copy)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    static List<String> said(Process process) throws Exception {
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return said.lines().toList();
    }

    public static void main(String[] args) throws Exception {
        Path to = Path.of(args[1]);
        try {
            new SqliteStores().copy(Path.of(args[0]), to);
            System.out.println("made");
        } catch (CouldNotCopy e) {
            System.out.println(e.reason());
        }
        try (Stream<Path> left = Files.list(to.getParent())) {
            System.out.println(left.map(Path::getFileName).toList());
        }
    }

    private static List<String> java(Path store, Path to, Path room) {
        return new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-Dorg.sqlite.tmpdir=" + room,
                "-cp",
                System.getProperty("java.class.path"),
                Copying.class.getName(),
                store.toString(),
                to.toString()));
    }
}
