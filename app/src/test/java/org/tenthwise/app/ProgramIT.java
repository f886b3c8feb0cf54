package org.tenthwise.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.checklists.catalogue.DemoPart;

/**
 * The jar that is handed over as a process of its own, as it is started from a shell, without a display. What went well
 * leaves standard error empty, whatever the Java is that runs it.
 */
class ProgramIT {

    private static final long MOST_MINUTES = 5;

    @TempDir
    private Path folder;

    private record Ended(int exit, List<String> out, List<String> err) {}

    private Ended run(String... arguments) throws Exception {
        return run(List.of(), arguments);
    }

    /** @param before what starts the program */
    private Ended run(List<String> before, String... arguments) throws Exception {
        List<String> command = new ArrayList<>(before);
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Duser.home=" + folder,
                "-jar",
                Path.of("target", "tenthwise.jar").toAbsolutePath().toString()));
        command.addAll(List.of(arguments));
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().keySet().removeAll(Set.of("DISPLAY", "JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS"));
        Process process = builder.start();
        try {
            assertTrue(process.waitFor(MOST_MINUTES, TimeUnit.MINUTES), "the program does not end");
        } finally {
            process.destroyForcibly();
        }
        Ended ended = new Ended(process.exitValue(), Files.readAllLines(out), Files.readAllLines(err));
        if (ended.exit() == 0) {
            assertEquals(List.of(), ended.err());
        }
        return ended;
    }

    @Test
    void theClientSaysThatThereIsNoDisplay() throws Exception {
        Ended ended = run();
        assertEquals(2, ended.exit());
        assertEquals(List.of(), ended.out());
        assertEquals(1, ended.err().size(), ended.err()::toString);
        assertTrue(ended.err().get(0).contains("tenthwise demo"));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void aClosedStandardInputIsSaidToBeClosed() throws Exception {
        Ended ended = run(List.of("sh", "-c", "exec \"$0\" \"$@\" <&-"), "compute");
        assertEquals(new Ended(2, List.of(), List.of("Reading broke at line 1: Standard input is closed.")), ended);
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void aSumIsWorkedOut() throws Exception {
        Files.writeString(
                folder.resolve("sums.jsonl"), "{\"id\":\"s1\",\"calc\":\"summary\",\"values\":[\"1.0\",\"1.2\"]}\n");
        Ended ended = run(List.of("sh", "-c", "exec \"$0\" \"$@\" <sums.jsonl"), "compute");
        assertEquals(0, ended.exit(), ended::toString);
        assertEquals(1, ended.out().size(), ended::toString);
    }

    @Test
    void theExitCodesGetOut() throws Exception {
        assertEquals(
                0,
                run("walk", "WB-118", "--readings", "WB-118-pass", "--store", "s.db", "--out", "records")
                        .exit());
        assertEquals(
                1,
                run("walk", "WB-118", "--readings", "WB-118-fail", "--store", "s.db", "--out", "records")
                        .exit());
        assertEquals(0, run("verify", "s.db").exit());
        assertEquals(2, run("verify", "nowhere").exit());
        try (Stream<Path> records = Files.list(folder.resolve("records"))) {
            assertEquals(8, records.count());
        }
    }

    @Test
    void theDemoWalksAPartThroughTheScreensAndLeavesWholeRecordsAndPictures() throws Exception {
        Ended ended = run("demo", "--out", "left");
        assertEquals(0, ended.exit(), ended::toString);
        int walked = ended.out().size() - 4;
        assertTrue(ended.out().get(walked).endsWith("Conforms. Accepted by Inspector 1."), ended.out()::toString);
        assertSaysHowFarItIs(ended.out().subList(1, walked));
        Path left = folder.resolve("left");
        assertEquals(0, run("verify", "left/demo.db").exit());
        List<String> record = List.of(
                ended.out().get(walked + 2).substring("Record:   ".length()).split(", "));
        assertEquals(0, run("verify", record.get(2)).exit());
        assertTrue(Files.size(folder.resolve(record.get(0))) > 0);
        List<Path> pictures;
        try (Stream<Path> all = Files.list(left.resolve("pictures"))) {
            pictures = all.sorted().toList();
        }
        assertTrue(pictures.size() >= 50, pictures::toString);
        for (Path picture : pictures) {
            assertTrue(showsSomething(picture), picture::toString);
        }
    }

    /** A plain line a step, each step once and in their order. */
    private static void assertSaysHowFarItIs(List<String> lines) {
        int steps = DemoPart.SCREW_CARRIER.plan().steps().size();
        assertEquals(steps, lines.size(), lines::toString);
        for (int i = 0; i < steps; i++) {
            assertTrue(lines.get(i).startsWith("Check %d of %d: ".formatted(i + 1, steps)), lines.get(i));
            assertTrue(lines.get(i).chars().noneMatch(Character::isISOControl), lines.get(i));
        }
    }

    /** A picture of a tablet's size with more on it than a ground of one colour. */
    private static boolean showsSomething(Path file) throws IOException {
        BufferedImage picture = ImageIO.read(file.toFile());
        assertNotNull(picture, file::toString);
        assertEquals("1280 x 800", picture.getWidth() + " x " + picture.getHeight());
        int[] pixels = picture.getRGB(0, 0, 1280, 800, null, 0, 1280);
        return Arrays.stream(pixels).distinct().limit(20).count() == 20;
    }
}
