package org.tenthwise.app.store.sqlite;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * What a process did to the files of one folder, in its order; written down by a small library put before the C
 * library.
 */
final class WatchedDisk {

    /**
     * One thing done.
     *
     * @param what O opened, C closed, W written, T cut to a size, S synchronised, U name taken away, R renamed
     * @param handle of the file; of no meaning for U and R
     * @param number where it was written, or the size it was cut to, or, for O, whether the file was there before
     * @param path for O, U and R
     * @param data what was written, or the new name
     */
    record Act(char what, long handle, long number, String path, byte[] data) {}

    private WatchedDisk() {}

    /** Whether there is what it takes: Linux, and a C compiler. */
    static boolean possible() {
        return System.getProperty("os.name").equals("Linux") && compilerAnswers();
    }

    private static boolean compilerAnswers() {
        try {
            return new ProcessBuilder("cc", "--version")
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException | InterruptedException e) {
            return false;
        }
    }

    static Path library(Path room) throws IOException, InterruptedException {
        Path source = room.resolve("disk-watch.c");
        Path library = room.resolve("disk-watch.so");
        try (InputStream text = WatchedDisk.class.getResourceAsStream("disk-watch.c")) {
            Files.copy(text, source, StandardCopyOption.REPLACE_EXISTING);
        }
        run(new ProcessBuilder(
                "cc", "-shared", "-fPIC", "-O1", "-o", library.toString(), source.toString(), "-ldl", "-lpthread"));
        return library;
    }

    /** Runs a class in a process of its own and tells what it did to a folder. */
    static List<Act> of(Path library, Path folder, Path log, Class<?> main, String... arguments)
            throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-Dorg.sqlite.tmpdir=" + log.getParent(),
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
        line.addAll(List.of(arguments));
        ProcessBuilder process = new ProcessBuilder(line);
        process.environment().put("LD_PRELOAD", library.toString());
        process.environment().put("DISK_WATCH_FOLDER", folder.toString());
        process.environment().put("DISK_WATCH_LOG", log.toString());
        run(process);
        return read(log);
    }

    private static void run(ProcessBuilder process) throws IOException, InterruptedException {
        Process started = process.inheritIO().start();
        if (!started.waitFor(120, TimeUnit.SECONDS) || started.exitValue() != 0) {
            started.destroyForcibly();
            throw new IllegalStateException("This did not end well: " + process.command());
        }
    }

    private static List<Act> read(Path log) throws IOException {
        List<Act> acts = new ArrayList<>();
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(log)))) {
            for (int what = in.read(); what >= 0; what = in.read()) {
                acts.add(new Act(
                        (char) what,
                        in.readLong(),
                        in.readLong(),
                        new String(in.readNBytes(in.readInt()), UTF_8),
                        in.readNBytes(in.readInt())));
            }
        }
        return acts;
    }
}
