package org.tenthwise.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** ± and ° are two bytes each in UTF-8, ′ three (RFC 3629); each byte of them comes as one sign that is lost. */
class ArgumentsAsTypedTest {

    @TempDir
    private Path folder = Path.of("");

    private Path line(String... words) throws IOException {
        return Files.writeString(folder.resolve("line"), String.join("\0", words) + "\0", StandardCharsets.UTF_8);
    }

    @Test
    void signsThatWereLostAreTakenFromTheLine() throws IOException {
        Path line = line("java", "-jar", "tenthwise.jar", "callout", "--general", ".XX ±.01 ANGLES ±0°30′", "");
        assertArrayEquals(
                new String[] {"callout", "--general", ".XX ±.01 ANGLES ±0°30′", ""},
                ArgumentsAsTyped.of(
                        line,
                        "callout",
                        "--general",
                        ".XX \uFFFD\uFFFD.01 ANGLES \uFFFD\uFFFD0\uFFFD\uFFFD30\uFFFD\uFFFD\uFFFD",
                        ""));
    }

    @Test
    void aLineThatIsAnotherChangesNothing() throws IOException {
        String[] given = {"callout", "\uFFFD\uFFFD"};
        assertArrayEquals(given, ArgumentsAsTyped.of(line("java", "callout", "±°"), given));
        assertArrayEquals(given, ArgumentsAsTyped.of(line("±"), given));
        assertArrayEquals(given, ArgumentsAsTyped.of(folder.resolve("none"), given));
    }

    @Test
    void nothingIsLookedUpWhereNothingWasLost() throws IOException {
        String[] given = {"check", "Welle Ø30.toml"};
        assertArrayEquals(given, ArgumentsAsTyped.of(line("java", "check", "other"), given));
    }
}
