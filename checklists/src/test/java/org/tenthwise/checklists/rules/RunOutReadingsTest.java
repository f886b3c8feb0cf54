package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.StepEvent;

/** What a readings file has of a run-out: a full turn, readings by angle, and both of a second section. */
class RunOutReadingsTest {

    private static final String SECTIONS = "sections = [{ name = \"near\", at = 30 }, { name = \"far\", at = 140 }]\n";
    private static final String HEAD =
            """
            format = 1
            part = "T-9"
            revision = "A"
            serial = "1"
            no_lot = true
            machine = "Lathe 4"
            by = "Setter 1"

            [[gauge]]
            id = "IN-1"
            kind = "dial-indicator"

            [[step]]
            number = 1
            gauge = "IN-1"
            """;

    @Test
    void aFullTurnComesBeforeTheReadingsByAngleWhateverTheirOrder() throws IOException {
        assertEquals(
                List.of("highest 0.03", "lowest 0.00", "1.1 0.01", "2.1 0.02", "3.1 0.03"),
                read(
                        "",
                        """
                readings = ["0.01", "0.02", "0.03"]
                lowest = "0.00"
                highest = "0.03"
                """));
    }

    @Test
    void theSecondSectionHasATableOfItsOwn() throws IOException {
        assertEquals(
                List.of(
                        "highest 0.03",
                        "lowest 0.00",
                        "far:highest 0.05",
                        "far:lowest 0.01",
                        "1.1 0.01",
                        "far:1.1 0.02",
                        "far:2.1 0.03"),
                read(
                                SECTIONS,
                                """
                        highest = "0.03"
                        lowest = "0.00"
                        readings = ["0.01"]
                        far = { readings = ["0.02", "0.03"], lowest = "0.01", highest = [{ reading = "0.5", struck = "slipped" }, "0.05"] }
                        """)
                        .stream()
                        .filter(read -> !read.endsWith(" 0.5"))
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
        far = { highest = "x" }               | 16:9: check 1, far: "x" is not a plain decimal number
        far = { readings = ["1", "2", "3", "4", "5"] } | 16:9: check 1, far: 5 readings, and the plan has room for 4
        far = { hihgest = "1" }               | 16:9: check 1, far: unknown key "hihgest"; did you mean "highest"?
        far = ["1"]                           | 16:1: check 1: "far" must be a table, not a list
        far = { readings = [{ reading = 1 }] } | 16:23: check 1, far, reading: a reading must be in quotes, as typed; here is the number 1
        """)
    void whatIsWrongOfTheSecondSectionIsTold(String line, String problem) throws IOException {
        SampleReading.Bad bad = assertInstanceOf(
                SampleReading.Bad.class, new SampleReader().read(HEAD + line + "\n", spindle(SECTIONS)));
        assertEquals(problem, Corpus.lines(bad.problems()));
    }

    @Test
    void aPlanOfOneSectionHasNoFarOne() throws IOException {
        SampleReading.Bad bad = assertInstanceOf(
                SampleReading.Bad.class, new SampleReader().read(HEAD + "far = { highest = \"1\" }\n", spindle("")));
        assertEquals("16:1: check 1: unknown key \"far\"", Corpus.lines(bad.problems()));
    }

    private static List<String> read(String sections, String readings) throws IOException {
        ReadingsFile sample = assertInstanceOf(
                        SampleReading.Good.class, new SampleReader().read(HEAD + readings, spindle(sections)))
                .sample();
        return sample.events().stream()
                .flatMap(event -> event instanceof StepEvent.ReadingTaken taken
                        ? Stream.of(taken.slot() + " " + taken.typed().text())
                        : Stream.empty())
                .toList();
    }

    private static Plan spindle(String sections) throws IOException {
        String text = Files.readString(Path.of("src/test/resources/plans/spindle.toml"));
        return assertInstanceOf(PlanReading.Good.class, new PlanReader().read(text + sections))
                .plan();
    }
}
