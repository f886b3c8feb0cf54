package org.tenthwise.app.store.sqlite;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.run.Entry;

/** A process of its own that takes readings into a store until it is killed, and says each one that is saved. */
final class AnotherProcess implements AutoCloseable {

    private final Process process;
    private final BufferedReader said;

    private AnotherProcess(Process process) {
        this.process = process;
        this.said = process.inputReader(StandardCharsets.UTF_8);
    }

    /**
     * @param round goes into every reading, so that no two rounds take the same
     * @param room where the process may leave files
     */
    static AnotherProcess takingReadings(Path store, int round, Path room) throws IOException {
        return new AnotherProcess(new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Xshare:auto",
                        "-Dorg.sqlite.tmpdir=" + room,
                        "-cp",
                        System.getProperty("java.class.path"),
                        AnotherProcess.class.getName(),
                        store.toString(),
                        Integer.toString(round))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start());
    }

    /**
     * What the process does: a line for each entry, its number and its figure, or the reason why it could not begin.
     */
    public static void main(String[] args) throws CouldNotSave {
        try (Ledger ledger = new SqliteStores().open(Path.of(args[0]))) {
            for (int reading = 0; ; reading++) {
                String figure = "%s.%06d".formatted(args[1], reading);
                Entry entry = Sample.read(ledger, "run-1", figure);
                System.out.print(entry.seq() + " " + figure + "\n");
                System.out.flush();
            }
        } catch (CouldNotOpen e) {
            System.out.print(e.reason() + "\n");
        }
    }

    /** The next whole line; waits for it. */
    String line() throws IOException {
        return said.readLine();
    }

    /** Ends it by force. Not through the process itself, which would throw away what was said and not yet read. */
    void kill() throws InterruptedException {
        process.toHandle().destroyForcibly();
        if (!process.waitFor(20, TimeUnit.SECONDS)) {
            throw new IllegalStateException("The process does not end");
        }
    }

    /** Whole lines not read yet, once the process is dead; a line cut short by the kill is left out. */
    List<String> lastWords() throws IOException {
        StringBuilder rest = new StringBuilder();
        char[] some = new char[8192];
        for (int n = said.read(some); n >= 0; n = said.read(some)) {
            rest.append(some, 0, n);
        }
        List<String> lines = new ArrayList<>(List.of(rest.toString().split("\n", -1)));
        lines.remove(lines.size() - 1);
        return lines;
    }

    @Override
    public void close() {
        process.destroyForcibly();
        try {
            said.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
