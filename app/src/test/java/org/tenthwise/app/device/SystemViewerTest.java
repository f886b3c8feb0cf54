package org.tenthwise.app.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.session.Background;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Words;

/** With commands written for the test, run as processes. */
@DisabledOnOs(OS.WINDOWS)
class SystemViewerTest {

    private static final Windowing DISPLAY = new Windowing(Map.of("DISPLAY", ":0"), "Linux", Optional.empty());
    private static final Windowing NO_DISPLAY = new Windowing(Map.of(), "Linux", Optional.empty());
    private static final Duration LONG = Duration.ofMinutes(1);

    @TempDir
    private Path folder;

    private Path file;
    private Path noted;
    private final List<Optional<String>> outcomes = new ArrayList<>();

    @BeforeEach
    void aRecordThatWasSaved() throws IOException {
        file = Files.writeString(folder.resolve("LG-2207 C ü.csv"), "a record");
        noted = folder.resolve("noted");
    }

    private void command(String name, String does) throws IOException {
        Path command = Files.writeString(folder.resolve(name), "#!/bin/sh\n" + does + "\n");
        assertTrue(command.toFile().setExecutable(true));
    }

    private SystemViewer viewer(Windowing windowing, String system, Duration patience) {
        return new SystemViewer(
                windowing,
                system,
                "" + File.pathSeparator + folder.resolve("not-there") + File.pathSeparator + folder,
                new Background(Runnable::run, Runnable::run),
                patience);
    }

    private void open(Duration patience) {
        viewer(DISPLAY, "Linux", patience)
                .open(file, why -> outcomes.add(why.map((Message said) -> Words.ENGLISH.say(said))));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # system,   its command,  a display, whether files can be opened
            Linux,      xdg-open,     true,      true
            Linux,      open,         true,      false
            Mac OS X,   open,         true,      true
            Mac OS X,   xdg-open,     true,      false
            Windows 11, rundll32.exe, true,      true
            Linux,      xdg-open,     false,     false
            """)
    void itIsThereWhereTheSystemHasItsCommandAndAWindowCanBeShown(
            String system, String command, boolean display, boolean there) throws IOException {
        command(command, "exit 0");
        assertEquals(there, viewer(display ? DISPLAY : NO_DISPLAY, system, LONG).isThere());
    }

    @Test
    void aFileThatCannotBeRunIsNoCommand() throws IOException {
        Files.writeString(folder.resolve("xdg-open"), "not a program");
        assertFalse(viewer(DISPLAY, "Linux", LONG).isThere());
    }

    @Test
    void theFileIsGivenAsOneWholePlaceWhateverIsInItsName() throws IOException {
        command("xdg-open", "printf '%s|' \"$@\" > '" + noted + "'");
        open(LONG);
        assertEquals(List.of(Optional.empty()), outcomes);
        assertEquals(file.toAbsolutePath() + "|", Files.readString(noted));
    }

    @Test
    void thatNothingOpenedItIsSaidWithItsPlace() throws IOException {
        command("xdg-open", "echo complaint; echo complaint >&2; exit 3");
        open(LONG);
        assertEquals(
                List.of(Optional.of("No program here opened LG-2207 C ü.csv. The file is in " + folder + ".")),
                outcomes);
    }

    @Test
    void aCommandThatCannotBeStartedOpenedNothing() throws IOException {
        command("xdg-open", "exit 0");
        SystemViewer viewer = viewer(DISPLAY, "Linux", LONG);
        Files.delete(folder.resolve("xdg-open"));
        viewer.open(file, why -> outcomes.add(why.map((Message said) -> said.key())));
        assertEquals(List.of(Optional.of("viewer.not-opened")), outcomes);
    }

    @Test
    void aFileThatIsGoneIsNotAskedFor() throws IOException {
        command("xdg-open", "touch '" + noted + "'");
        Files.delete(file);
        open(LONG);
        assertEquals(
                List.of(Optional.of(
                        "LG-2207 C ü.csv is no longer there. The run is safe in the store. Save the record again.")),
                outcomes);
        assertFalse(Files.exists(noted));
    }

    @Test
    void aProgramThatStaysOpenIsNotWaitedFor() throws IOException {
        command("xdg-open", "read word; exec sleep 20 # its input is at its end");
        long begun = System.nanoTime();
        open(Duration.ofMillis(200));
        assertEquals(List.of(Optional.empty()), outcomes);
        assertTrue(Duration.ofNanos(System.nanoTime() - begun).compareTo(Duration.ofSeconds(15)) < 0);
    }
}
