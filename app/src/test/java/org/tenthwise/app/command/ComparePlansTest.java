package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.SixtyBalloons;

class ComparePlansTest {

    @TempDir
    private Path folder;

    private Path before;

    @BeforeEach
    void write() throws Exception {
        before = Files.writeString(folder.resolve("before.toml"), SixtyBalloons.TEXT);
    }

    private Path after(String text) throws Exception {
        return Files.writeString(folder.resolve("after.toml"), text);
    }

    /** Balloon 6 is a diameter of 8, 7 of 9; 17 stands in zone B4; the last step of the file is balloon 51. */
    private static String revised() {
        String text = SixtyBalloons.TEXT
                .replace("issue = \"1\"", "issue = \"2\"")
                .replace("drawing_revision = \"E\"", "drawing_revision = \"F\"")
                .replace("upper = 8.020", "upper = 8.022")
                .replace("Ø8 +0.02/0", "Ø8 +0.022/0")
                .replace(
                        "balloon = \"17\"\nsheet = 1\ndrawing_zone = \"B4\"",
                        "balloon = \"17\"\nsheet = 1\ndrawing_zone = \"B5\"")
                .replace("lower = 9.000", "lower = 9.00");
        return text.substring(0, text.lastIndexOf("[[step]]"));
    }

    @Test
    void whatChangedIsToldByBalloonWithWhatIsToBeCheckedAgain() throws Exception {
        Typed typed = Typed.line("compare", before, after(revised()));
        assertEquals(1, typed.exit());
        assertEquals(
                List.of(
                        "From SB-60 rev B, issue 1 to SB-60 rev B, issue 2",
                        "The whole part",
                        "  drawing, revision of the drawing: was E, now F",
                        "6, check 4: Characteristic of balloon 6 - check again",
                        "  requirement, words of the drawing: was Ø8 +0.02/0, now Ø8 +0.022/0",
                        "  requirement, upper limit: was 8.020 mm, now 8.022 mm",
                        "7, check 47: Characteristic of balloon 7",
                        "  written otherwise only, lower limit: was 9.000 mm, now 9.00 mm",
                        "17, check 40: Characteristic of balloon 17",
                        "  place on the drawing, zone: was B4, now B5",
                        "51, check 62: Characteristic of balloon 51",
                        "  gone",
                        "Proposed to be checked again, 1 characteristic: 6. "
                                + "A person confirms each, and each that is left out.",
                        "Plans do not show another place, machine, tool, program or source of material: ask."),
                typed.out());
        assertEquals(List.of(), typed.err());
    }

    @Test
    void asATableEachDifferenceIsARow() throws Exception {
        Typed typed = Typed.line("compare", before, after(revised()), "--as", "csv");
        assertEquals(1, typed.exit());
        assertEquals(
                List.of(
                        "||||drawing|drawing-revision|E|F|",
                        "6|4|4|Characteristic of balloon 6|requirement|requirement|Ø8 +0.02/0|Ø8 +0.022/0|yes",
                        "6|4|4|Characteristic of balloon 6|requirement|upper-limit|8.020 mm|8.022 mm|yes",
                        "7|47|47|Characteristic of balloon 7|as-written|lower-limit|9.000 mm|9.00 mm|",
                        "17|40|40|Characteristic of balloon 17|place|zone|B4|B5|",
                        "51|62||Characteristic of balloon 51|gone||||"),
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get()
                        .parse(new StringReader(String.join("\r\n", typed.out())))
                        .stream()
                        .map(row -> Stream.of(row.values()).collect(Collectors.joining("|")))
                        .toList());
    }

    @Test
    void anotherIssueThatMeansTheSameIsAlike() throws Exception {
        Typed same = Typed.line("compare", before, after(SixtyBalloons.TEXT.replace("issue = \"1\"", "issue = \"2\"")));
        assertEquals(0, same.exit());
        assertEquals("No difference.", same.out().get(1));
        Typed alike = Typed.line("compare", before, after(SixtyBalloons.TEXT.replace("lower = 9.000", "lower = 9.00")));
        assertEquals(0, alike.exit());
        assertEquals(
                "The two mean the same; only words, or how figures are written, are different.",
                alike.out().get(3));
        assertEquals(0, Typed.line("compare", "LG-2207", "LG-2207").exit());
    }

    @Test
    void aChangeOfTheWholePartProposesAllOfIt() throws Exception {
        Typed typed = Typed.line("compare", before, after(SixtyBalloons.TEXT.replace("R-17 issue 2", "R-17 issue 3")));
        assertEquals(1, typed.exit());
        assertTrue(
                typed.out()
                        .get(3)
                        .startsWith("What changed of the whole part proposes to check all again, 60 characteristics"),
                typed.out()::toString);
    }

    @Test
    void aPlanThatCannotBeReadIsNamedWithItsErrors() throws Exception {
        Path bad = after(SixtyBalloons.TEXT.replace("unit = \"mm\"", "unit = \"cm\""));
        Typed typed = Typed.line("compare", before, bad);
        assertEquals(2, typed.exit());
        assertTrue(typed.err().get(0).startsWith(bad + ":12:1: \"unit\""), typed.err()::toString);
        assertEquals(
                2, Typed.line("compare", before, folder.resolve("none.toml")).exit());
        assertEquals(2, Typed.line("compare", before, before, "--as", "pdf").exit());
        assertEquals(2, Typed.line("compare", before).exit());
    }
}
