package org.tenthwise.app.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.tenthwise.app.backup.BackupWish;
import org.tenthwise.app.bundle.Making;
import org.tenthwise.app.export.CsvRecord;
import org.tenthwise.app.export.JsonRecord;
import org.tenthwise.app.export.SeriesViewCsv;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.SeriesViewPdf;
import org.tenthwise.app.firstarticle.ReportCsv;
import org.tenthwise.app.firstarticle.ReportWorkbook;
import org.tenthwise.app.seal.SealedStores;
import org.tenthwise.app.series.SeriesSums;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.model.words.Words;
import picocli.CommandLine;

/**
 * What came of a line typed: exit code and what was printed on either stream.
 *
 * @param opened what the client was asked for
 */
record Typed(int exit, List<String> out, List<String> err, List<String> opened) {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T08:15:00Z"), ZoneOffset.ofHours(1));

    /** What lies in a folder, by name. */
    static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    /** Types a line where there is no display. */
    static Typed line(Object... words) {
        return line(new Asked(false, new ArrayList<>(), Optional.empty()), words);
    }

    /** Types a line where there is a display. */
    static Typed withDisplay(Object... words) {
        return line(new Asked(true, new ArrayList<>(), Optional.empty()), words);
    }

    /** Types the name of the program alone, and something goes wrong. */
    static Typed whatGoesWrong(Exception trouble) {
        return line(new Asked(true, new ArrayList<>(), Optional.of(trouble)));
    }

    /** Types the batch command, with {@code in} on standard input and {@code to} behind standard output. */
    static Typed piped(InputStream in, OutputStream to, String... options) {
        return piped("compute", in, to, options);
    }

    /** The same for any command that reads standard input. */
    static Typed piped(String command, InputStream in, OutputStream to, String... options) {
        return line(
                new Asked(false, new ArrayList<>(), Optional.empty()),
                new Streams(in, to),
                Stream.concat(Stream.of(command), Stream.of(options)).toArray());
    }

    private static Typed line(Asked client, Object... words) {
        return line(client, new Streams(InputStream.nullInputStream(), OutputStream.nullOutputStream()), words);
    }

    private static Typed line(Asked client, Streams streams, Object... words) {
        return in(Words.ENGLISH, client, streams, words);
    }

    /** Types a line where a language is spoken. */
    static Typed in(Words language, Object... words) {
        return in(
                language,
                new Asked(false, new ArrayList<>(), Optional.empty()),
                new Streams(InputStream.nullInputStream(), OutputStream.nullOutputStream()),
                words);
    }

    /** @param words what stands behind the name of the program; paths and others by their text */
    private static Typed in(Words language, Asked client, Streams streams, Object... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine commands = CommandLines.of(new Tools(
                client,
                new SealedStores(new SqliteStores()),
                CLOCK,
                language,
                new PlanReader(),
                List.of(new CsvRecord(), new JsonRecord()),
                List.of(
                        new SeriesViewPdf(new SeriesSums(Handbook.sums()), language, Paper.A4, "Tenthwise 0.1.0-test"),
                        new SeriesViewCsv(new SeriesSums(Handbook.sums()))),
                new Making(place -> List.of(new CsvRecord(), new JsonRecord()), Locale.ENGLISH, "0.1.0-test"),
                Stream.concat(ReportCsv.all().stream(), Stream.of(new ReportWorkbook(language)))
                        .toList(),
                "0.1.0-test",
                Handbook.sums(),
                streams));
        commands.setOut(new PrintWriter(out, true));
        commands.setErr(new PrintWriter(err, true));
        String[] arguments = List.of(words).stream().map(String::valueOf).toArray(String[]::new);
        return new Typed(
                commands.execute(arguments),
                out.toString().lines().toList(),
                err.toString().lines().toList(),
                client.opened());
    }

    /** The one line of trouble, where there is nothing else. */
    String trouble() {
        if (exit != 2 || err.size() != 1 || !out.isEmpty()) {
            throw new AssertionError("one line of trouble and exit 2 are wanted: " + this);
        }
        return err.get(0);
    }

    /** A line in columns, with a stroke between them. */
    static String columns(String line) {
        return String.join(
                "|",
                Arrays.stream(line.strip().split(" {3,}|(?<=\\d|\\S) {2}(?=\\S)"))
                        .map(String::strip)
                        .toList());
    }

    /** A client that keeps what it was asked for and shows nothing. */
    private record Asked(boolean hasDisplay, List<String> opened, Optional<Exception> trouble) implements Client {

        @Override
        public void open(Optional<Path> store, Optional<Path> plans, BackupWish backups) throws Exception {
            if (trouble.isPresent()) {
                throw trouble.get();
            }
            opened.add("open " + store.map(Path::toString).orElse("own") + " "
                    + plans.map(Path::toString).orElse("own")
                    + backups.folder().map(folder -> " backup to " + folder).orElse("")
                    + backups.kept().map(kept -> " keep " + kept).orElse(""));
        }

        @Override
        public void openDemo(Path store, Path records) throws CouldNotOpen {
            try (KeptEntries kept = new SqliteStores().openToRead(store)) {
                opened.add("demo with " + kept.runs() + " " + kept.verify().whole());
            }
        }

        @Override
        public List<String> walkDemo(Path folder, Consumer<String> along) {
            along.accept("Step 1 of 1");
            opened.add("walk " + folder);
            return List.of("a picture");
        }
    }
}
