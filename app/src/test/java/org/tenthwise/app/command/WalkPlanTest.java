package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.verdict.VerdictKind;

/** What a walk comes to: its lines, its exit code, its signatures, and what the readings file expects. */
class WalkPlanTest extends Walking {

    @ParameterizedTest
    @CsvSource({
        "LG-2207, LG-2207-pass, 0",
        "LG-2207, LG-2207-fail, 1",
        "WB-118, WB-118-pass, 0",
        "WB-118, WB-118-fail, 1"
    })
    void theExitCodeSaysWhetherEverythingPassed(String plan, String readings, int exit) {
        Typed typed = walk(plan, readings);
        assertEquals(exit, typed.exit(), typed::toString);
        assertEquals(List.of(), typed.err());
    }

    /** The verdicts are those the demo files expect, which were worked out by hand. */
    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void theRunComesToWhatTheReadingsFilesExpect(DemoPart part) throws Exception {
        for (String readings : List.of(part.passingReadings(), part.failingReadings())) {
            Path file = file("r.toml", readings);
            Files.deleteIfExists(store);
            walk(part.planFile(), file);
            ReadingsFile sample = ((SampleReading.Good) new SampleReader().read(readings, part.plan())).sample();
            try (KeptEntries kept = new SqliteStores().openToRead(store)) {
                Sheet sheet = Runs.sheet(kept, kept.runs().get(0));
                sample.expected().forEach((number, standing) -> {
                    Line line = sheet.line(number);
                    if (!line.held()) {
                        assertEquals(standing, line.finding().verdict().standing(), "check " + number);
                    }
                });
            }
        }
    }

    /** Wires on the root are told once, with how deep they lie, and then what to do. */
    @Test
    void thatAWireTouchesTheRootIsSaidOnce() {
        String thread = walk("WB-118", "WB-118-fail").out().get(21);
        assertTrue(
                thread.contains("The wire touches the root, 0.0039 in too deep. The reading proves nothing. Use wires"),
                thread);
        assertEquals(2, thread.split("touches the root", -1).length, thread);
    }

    @Test
    void everyCharacteristicIsALineWithVerdictAndDistance() throws Exception {
        List<String> said = walk("LG-2207", "LG-2207-pass").out();
        assertEquals(35 + 2, said.size());
        // cut before: 29.8565·(1 + 11.5e-6·0.5)/(1 + 16.2e-6·3.4) = 29.8550 to 30.0105 by whole 0.001; to 30.01325
        // read, 30.0121 at 20 °C
        // 30.015·(1 + 11.5e-6·0.5)/(1 + 16.2e-6·2.8) = 30.0138 at 20 °C, by hand
        assertEquals(
                "13|Bore Ø30 H7|30.014|Pass|0.007 mm inside the upper limit. Cut 1: asked 0.155, came off 0.157.",
                Typed.columns(said.get(12)));
        assertEquals("24|Thread ring gauge|go enters, not-go stops|Pass", Typed.columns(said.get(23)));
        assertEquals("Conforms. Accepted by Inspector 1.", said.get(35));
        List<Path> files = Typed.files(out);
        assertEquals("Run LG-2207-C-014. Record: %s, %s".formatted(files.get(0), files.get(1)), said.get(36));
        assertTrue(
                files.get(0).getFileName().toString().matches("LG-2207-C-014-\\d+-[0-9a-f]{8}\\.csv"), files::toString);
    }

    @Test
    void readingsOfAStepBehindAShutHoldPointAreRefusedAloudAndWhatWasTakenBeforeIsKept() throws Exception {
        Typed typed = walkReadings(DemoPart.SCREW_CARRIER
                .passingReadings()
                .replaceFirst("number = 3\\s+answers = \\[\"yes\"\\]", "number = 3\nanswers = [\"no\"]"));
        assertEquals(2, typed.exit());
        assertEquals(
                "Check 6: On hold until 3 has passed or is accepted under concession, and the readings "
                        + "file has readings of "
                        + "it. What was taken before it is saved as run LG-2207-C-014. Correct the readings file.",
                typed.trouble());
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            Sheet sheet = Runs.sheet(kept, "LG-2207-C-014");
            assertEquals(VerdictKind.FAIL, sheet.line(3).finding().verdict().standing());
            assertTrue(sheet.line(6).passes().stream().allMatch(pass -> pass.isEmpty()));
        }
    }

    @Test
    void aStepBehindAShutHoldPointThatTheFileSaysNothingOfIsHeld() throws Exception {
        String sample = DemoPart.SCREW_CARRIER.passingReadings();
        Typed typed = walkReadings(
                sample.substring(0, sample.indexOf("[[step]]"))
                        + """
                [[step]]
                number = 1
                answers = ["no"]
                """);
        assertEquals(1, typed.exit());
        assertEquals(
                "6|Coolant and chips|Open|On hold: waits for 1–5.",
                Typed.columns(typed.out().get(5)));
        assertTrue(
                typed.out()
                        .contains("The signature of Inspector 1 was not accepted. What does not conform, or is not "
                                + "complete, cannot be accepted."),
                typed.out()::toString);
    }

    @Test
    void aPartThatPassedButIsNotAcceptedDoesNotEndWell() throws Exception {
        Typed typed = walkWith("meaning = \"accepted\"", "meaning = \"not accepted\"");
        assertEquals(1, typed.exit());
        assertEquals("Conforms. Not accepted by Inspector 1.", typed.out().get(35));
    }

    @Test
    void furtherSignaturesFollowTheOneThatClosesAndASecondPersonIsAnother() throws Exception {
        Typed typed = walkWith(
                "[[gauge]]\nid = \"IN-1\"",
                """
                [[signature]]
                by = "setter2"
                meaning = "measured again"

                [[signature]]
                by = "Inspector 2"
                meaning = "measured again"

                [[gauge]]
                id = "IN-1\"""");
        assertEquals(1, typed.exit());
        assertTrue(
                typed.out()
                        .contains("The signature of setter2 was not accepted. This person made the part or took "
                                + "its readings. The second person must be someone else."),
                typed.out()::toString);
    }

    @Test
    void whatDoesNotComeToWhatTheFileExpectsIsPrintedAndTheExitCodeSaysSo() throws Exception {
        Typed typed = walkReadings(replaced(
                passing("13 = \"pass\"", "13 = \"cut again\""),
                "outcome = \"conforms\"",
                "outcome = \"does not conform\""));
        assertEquals(1, typed.exit());
        assertEquals(
                List.of(
                        "Check 13: the readings file expects \"cut again\", and the result is \"pass\".",
                        "The outcome: the readings file expects \"does not conform\", and the result is \"conforms\"."),
                typed.out().subList(typed.out().size() - 2, typed.out().size()));
    }

    /** The fourth example is conceded, which ends with 1; both come to what they expect. */
    @Test
    void theExamplesOfTheGuideAreWalkedAsTheyStand() throws Exception {
        String guide = Files.readString(Path.of("../checklists/plan-file.md"));
        List<String> examples = Pattern.compile("```toml\n(.*?)```", Pattern.DOTALL)
                .matcher(guide)
                .results()
                .map(found -> found.group(1))
                .toList();
        assertEquals(4, examples.size());
        for (int i = 0; i < examples.size(); i += 2) {
            Path plan = file("plan-%d.toml".formatted(i), examples.get(i));
            Path readings = file("r-%d.toml".formatted(i), examples.get(i + 1));
            Typed typed = walk(plan, readings);
            assertEquals(i == 0 ? 0 : 1, typed.exit(), typed::toString);
            assertTrue(typed.out().stream().noneMatch(line -> line.contains("expects")), typed.out()::toString);
        }
    }
}
