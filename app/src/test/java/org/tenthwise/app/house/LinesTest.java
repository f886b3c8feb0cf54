package org.tenthwise.app.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the formatter leaves alone: a text in quotes that runs past the end of the line. */
class LinesTest {

    private static final int COLUMNS = 120;
    private static final String BLOCK = "\"\"\"";

    @Test
    void noLineOfCodeIsLongerThanTheFormatterAllows() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(Path.of(".."))) {
            files = all.filter(file -> file.toString().endsWith(".java")
                            && !file.toString().contains("target"))
                    .toList();
        }
        assertTrue(files.size() > 600, () -> "only %d files were seen".formatted(files.size()));
        assertEquals(List.of(), files.stream().flatMap(LinesTest::tooLong).toList());
    }

    /** Lines outside text blocks; the pieces between their marks are code and text by turns. */
    private static Stream<String> tooLong(Path file) {
        String[] pieces = read(file).split(BLOCK, -1);
        return IntStream.range(0, pieces.length)
                .filter(piece -> piece % 2 == 0)
                .boxed()
                .flatMap(piece -> pieces[piece].lines())
                .filter(line -> line.length() > COLUMNS)
                .map(line -> file + ": " + line.strip());
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
