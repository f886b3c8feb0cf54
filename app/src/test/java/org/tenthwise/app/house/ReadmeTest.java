package org.tenthwise.app.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;

/**
 * The README tells the truth: its files can be read, its pictures are there, its commands are the ones the script runs.
 */
class ReadmeTest {

    private static final Path TOP = Path.of("..").toAbsolutePath().normalize();
    private static final Pattern TOML = Pattern.compile("```toml\\R(.*?)```", Pattern.DOTALL);
    private static final Pattern PICTURE = Pattern.compile("!\\[[^]]+]\\(([^)]+)\\)");
    private static final Pattern LINK = Pattern.compile("(?<!!)\\[[^]]+]\\((?!http)([^)]+)\\)");

    @Test
    void thePlanAndTheReadingsOfTheTourCanBeRead() throws IOException {
        List<String> files = all(TOML);
        assertEquals(2, files.size());
        PlanReading plan = new PlanReader().read(files.get(0));
        assertInstanceOf(PlanReading.Good.class, plan, plan::toString);
        SampleReading readings = new SampleReader().read(files.get(1), ((PlanReading.Good) plan).plan());
        assertInstanceOf(SampleReading.Good.class, readings, readings::toString);
    }

    @Test
    void everyPictureAndEveryLinkIsThere() throws IOException {
        List<String> pictures = all(PICTURE);
        assertTrue(pictures.size() >= 4, "Too few pictures found: " + pictures);
        for (String picture : pictures) {
            assertTrue(Files.isRegularFile(TOP.resolve(picture)), picture);
        }
        for (String link : all(LINK)) {
            assertTrue(Files.exists(TOP.resolve(link)), link);
        }
    }

    @Test
    void theScriptRunsBothCommandsAsTheyStandThere() throws IOException {
        String script = Files.readString(TOP.resolve(".ci/run"));
        for (String command :
                List.of("mvn -q package -DskipTests && java -jar app/target/tenthwise.jar demo", "mvn verify")) {
            assertTrue(readme().contains("```\n" + command + "\n```"), command);
            assertTrue(script.contains("run '" + command + "'"), command);
        }
    }

    private static List<String> all(Pattern pattern) throws IOException {
        return pattern.matcher(readme())
                .results()
                .map((MatchResult found) -> found.group(1))
                .toList();
    }

    private static String readme() throws IOException {
        return Files.readString(TOP.resolve("README.md"));
    }
}
