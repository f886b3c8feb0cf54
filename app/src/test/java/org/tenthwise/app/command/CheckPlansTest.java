package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.checklists.catalogue.DemoPart;

class CheckPlansTest {

    private static final String LOOK =
            """
            [[step]]
            number = %d
            operation = 10
            kind = "look"
            name = "Edges"
            what = "Edges broken."
            %s

            """;

    @TempDir
    private Path folder;

    private Path good;

    @BeforeEach
    void write() throws Exception {
        good = Files.writeString(folder.resolve("good.toml"), DemoPart.SCREW_CARRIER.planText());
    }

    @Test
    void aSoundPlanIsSaidToBeSound() {
        Typed typed = Typed.line("check", good);
        assertEquals(0, typed.exit());
        assertEquals(List.of(good + ": no errors: LG-2207 rev C, issue 9, 35 checks"), typed.out());
    }

    @Test
    void balloonsMissingInTheRowAndChecksWithoutOneAreRemarks() throws Exception {
        Path ballooned = Files.writeString(
                folder.resolve("ballooned.toml"),
                InventedPlans.text(
                        "mm",
                        Stream.of("12", "13", "15", "19", "")
                                .map(balloon -> LOOK.formatted(
                                        balloon.isEmpty() ? 20 : Integer.parseInt(balloon),
                                        balloon.isEmpty() ? "" : "balloon = " + balloon))
                                .collect(Collectors.joining())));
        Typed typed = Typed.line("check", ballooned);
        assertEquals(0, typed.exit());
        assertEquals(
                List.of(
                        ballooned + ": no errors: T-1 rev A, issue 1, 5 checks",
                        ballooned + ": to look at: balloon 14 is missing in the row",
                        ballooned + ": to look at: balloons 16 to 18 are missing in the row",
                        ballooned + ": to look at: check 20 is of the drawing and without a balloon"),
                typed.out());
    }

    /** No part of it is ever complete, and that is said before the first is cut. */
    @Test
    void aBalloonThatNoCheckOfTheDrawingAnswersIsARemark() throws Exception {
        Path ballooned = Files.writeString(
                folder.resolve("on-the-way.toml"),
                InventedPlans.text(
                        "mm",
                        LOOK.formatted(12, "balloon = 12\nclass = \"in-process\"")
                                + LOOK.formatted(13, "balloon = 13")));
        Typed typed = Typed.line("check", ballooned);
        assertEquals(0, typed.exit());
        assertEquals(
                List.of(
                        ballooned + ": no errors: T-1 rev A, issue 1, 2 checks",
                        ballooned + ": to look at: balloon 12: no check of the drawing, so that no part is ever"
                                + " complete; leave out class where the check is of the drawing, or add an"
                                + " [[elsewhere]]"),
                typed.out());
        Path readings = Files.writeString(
                folder.resolve("on-the-way.readings.toml"),
                """
                format = 1
                part = "T-1"
                revision = "A"
                serial = "1"
                no_lot = true
                machine = "Lathe 4"
                by = "Setter 1"
                [[step]]
                number = 12
                answers = ["yes"]
                [[step]]
                number = 13
                answers = ["yes"]
                """);
        Typed walked = Typed.line(
                "walk", ballooned, "--readings", readings, "--store", folder.resolve("s.db"), "--out", folder);
        assertEquals(1, walked.exit());
        assertTrue(
                walked.out().contains("Not complete: no check of the drawing at balloon 12. Not signed."),
                walked.out()::toString);
    }

    @Test
    void aDemoPlanGoesByItsPartNumberOrItsFileName() {
        assertEquals(
                List.of(
                        "WB-118: no errors: WB-118 rev B, issue 6, 31 checks",
                        "LG-2207-C.toml: no errors: LG-2207 rev C, issue 9, 35 checks"),
                Typed.line("check", "WB-118", "LG-2207-C.toml").out());
    }

    @Test
    void everyProblemIsALineWithItsPlace() throws Exception {
        Path bad = Files.writeString(
                folder.resolve("bad.toml"),
                Files.readString(good)
                        .replaceFirst("limit = 0.020\n", "limit = 0.020\nlimits = 3\n")
                        .replace("unit = \"mm\"", "unit = \"cm\""));
        Typed typed = Typed.line("check", bad);
        assertEquals(1, typed.exit());
        assertEquals(2, typed.out().size(), typed.out()::toString);
        assertTrue(typed.out().get(0).startsWith(bad + ":12:1: \"unit\""), typed.out()::toString);
        assertEquals(List.of(), typed.err());
    }

    @Test
    void oneBadPlanAmongSeveralDecides() throws Exception {
        Path other = Files.writeString(folder.resolve("other.toml"), "format = 99");
        Typed typed = Typed.line("check", good, other);
        assertEquals(1, typed.exit());
        assertEquals(2, typed.out().size());
    }

    @Test
    void aMissingFileIsNamedAndTheOthersAreJudged() {
        Typed typed = Typed.line("check", "nowhere.toml", good);
        assertEquals(2, typed.exit());
        assertEquals(
                List.of("There is no plan file nowhere.toml. The demo plans included are LG-2207 and WB-118."),
                typed.err());
        assertEquals(1, typed.out().size());
    }

    @Test
    void anEmptyFileIsNoPlan() throws Exception {
        Path empty = Files.writeString(folder.resolve("empty.toml"), "\n");
        assertEquals(
                empty + " is empty. Give a file with something in it.",
                Typed.line("check", empty).trouble());
    }

    @Test
    void aFolderIsNoPlan() {
        assertEquals(
                folder + " is a folder. Give a file in it.",
                Typed.line("check", folder).trouble());
    }

    @Test
    void aFolderCalledAfterADemoPartDoesNotHideItsPlan() throws Exception {
        Path records = Files.createDirectories(Path.of("WB-118"));
        try {
            assertEquals(0, Typed.line("check", records).exit());
        } finally {
            Files.delete(records);
        }
    }

    @Test
    void whatIsNotTextIsNoPlan() throws Exception {
        Path odd = Files.write(
                folder.resolve("odd.toml"), "part = \"Spannh\u00fclse\"".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(
                odd + " is not UTF-8 text. Give a text file in TOML.",
                Typed.line("check", odd).trouble());
    }
}
