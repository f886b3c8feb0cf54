package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.PlanProblem;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Words;

/** What is wrong with wrong files, in a made-up language: only words of the files themselves are left in English. */
class MadeUpRefusalsTest {

    private static final Path FILES = Path.of("../checklists/src/test/resources");
    /** What the parser of TOML says of itself. */
    private static final String PARSER =
            "invalid unicode escape sequence, unexpected end of line, expected end-of-input, "
                    + "a character, comma, newline, boolean, date/time, array or table, float is too large, "
                    + "previously defined at column";

    private static final Plan PLAN = DemoPart.SCREW_CARRIER.plan();

    @Test
    void whatIsWrongWithAPlanIsSaidInTheWordsOfTheReader() throws IOException {
        assertEquals(
                List.of(),
                leftInEnglish(
                        "wrong-plans",
                        text -> new PlanReader().read(text) instanceof PlanReading.Bad bad
                                ? bad.problems()
                                : List.of()));
    }

    @Test
    void whatIsWrongWithAReadingsFileIsSaidInTheWordsOfTheReader() throws IOException {
        assertEquals(
                List.of(),
                leftInEnglish(
                        "wrong-readings",
                        text -> new SampleReader().read(text, PLAN) instanceof SampleReading.Bad bad
                                ? bad.problems()
                                : List.of()));
    }

    private static List<String> leftInEnglish(String folder, Function<String, List<PlanProblem>> read)
            throws IOException {
        Words words = MadeUpLanguage.words();
        List<String> left = new ArrayList<>();
        int seen = 0;
        try (Stream<Path> files = Files.list(FILES.resolve(folder))) {
            for (Path file : files.filter(one -> one.toString().endsWith(".toml"))
                    .sorted()
                    .toList()) {
                String text = Files.readString(file);
                for (PlanProblem problem : read.apply(text)) {
                    String shown = words.say(problem.what());
                    MadeUpLanguage.plainEnglish(shown.replaceAll("\"[^\"]*\"", ""), text + PARSER).stream()
                            .map(word -> "%s: %s in %s".formatted(file.getFileName(), word, shown))
                            .forEach(left::add);
                    seen++;
                }
            }
        }
        assertTrue(seen > 20, "hardly any problems were seen");
        return left;
    }
}
