package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.session.Shop;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.sqlite.SqliteLedger;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.Sample;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.plan.Body;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.verdict.Standing;

class WalkPlanTest {

    @TempDir
    private Path folder;
    private Path store;
    private Path out;

    @BeforeEach
    void name() {
        store = folder.resolve("s.db");
        out = folder.resolve("out");
    }

    private Typed walk(Object plan, Object readings) {
        return Typed.line("walk", plan, "--readings", readings, "--store", store, "--out", out);
    }

    @ParameterizedTest
    @CsvSource({"LG-2207, LG-2207-pass, 0", "LG-2207, LG-2207-fail, 1", "WB-118, WB-118-pass, 0", "WB-118, WB-118-fail, 1"})
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
            Path file = Files.writeString(folder.resolve("r.toml"), readings);
            Files.deleteIfExists(store);
            walk(part.planFile(), file);
            Sample sample = ((SampleReading.Good) new SampleReader().read(readings, part.plan())).sample();
            try (KeptEntries kept = SqliteLedger.openToRead(store)) {
                Sheet sheet = Shop.sheet(kept, kept.runs().get(0));
                sample.expected().forEach((number, standing) -> {
                    Line line = sheet.line(number);
                    if (!line.held()) {
                        assertEquals(standing, line.finding().verdict().standing(), "check " + number);
                    }
                });
            }
        }
    }

    @Test
    void everyCharacteristicIsALineWithVerdictAndDistance() throws Exception {
        List<String> said = walk("LG-2207", "LG-2207-pass").out();
        assertEquals(35 + 2, said.size());
        // cut before: 29.8565·(1 + 11.5e-6·0.5)/(1 + 16.2e-6·3.4) = 29.8550 to 30.0105 by whole 0.001; to 30.01325 read, 30.0121 at 20 °C
        // 30.015·(1 + 11.5e-6·0.5)/(1 + 16.2e-6·2.8) = 30.0138 at 20 °C, by hand
        assertEquals("13|Bore Ø30 H7|30.014|Pass|0.007 mm inside the upper limit. Cut 1: asked 0.155, came off 0.157.", Typed.columns(said.get(12)));
        assertEquals("24|Nut, go|go enters, not-go stays out|Pass", Typed.columns(said.get(23)));
        assertEquals("Conforms. Accepted by Inspector 1.", said.get(35));
        List<Path> files = Typed.files(out);
        assertEquals("Run LG-2207-C-014. Record: %s, %s".formatted(files.get(0), files.get(1)), said.get(36));
        assertTrue(files.get(0).getFileName().toString().matches("LG-2207-C-014-\\d+-[0-9a-f]{8}\\.csv"), files::toString);
    }

    @Test
    void readingsOfAStepBehindAShutHoldPointAreRefusedAloudAndWhatWasTakenBeforeIsKept() throws Exception {
        Path readings = Files.writeString(folder.resolve("r.toml"), DemoPart.SCREW_CARRIER.passingReadings()
                .replaceFirst("number = 3\\s+answers = \\[\"yes\"\\]", "number = 3\nanswers = [\"no\"]"));
        Typed typed = walk("LG-2207", readings);
        assertEquals(2, typed.exit());
        assertEquals("Check 6: A hold point keeps this step shut until 3 has passed or is conceded, and the readings file has readings of "
                + "it. What was taken before it is kept as run LG-2207-C-014. Put the readings file right.", typed.trouble());
        try (KeptEntries kept = SqliteLedger.openToRead(store)) {
            Sheet sheet = Shop.sheet(kept, "LG-2207-C-014");
            assertEquals(Standing.FAIL, sheet.line(3).finding().verdict().standing());
            assertTrue(sheet.line(6).passes().stream().allMatch(pass -> pass.isEmpty()));
        }
    }

    @Test
    void aStepBehindAShutHoldPointThatTheFileSaysNothingOfIsHeld() throws Exception {
        Path readings = Files.writeString(folder.resolve("r.toml"), head() + """
                [[step]]
                number = 1
                answers = ["no"]
                """);
        Typed typed = walk("LG-2207", readings);
        assertEquals(1, typed.exit());
        assertEquals("6|Coolant and chips|Open|Held: waits for 1, 2, 3, 4, 5.", Typed.columns(typed.out().get(5)));
        assertTrue(typed.out().contains("The signature of Inspector 1 was not taken. What does not conform, or is not complete, cannot be accepted."),
                typed.out()::toString);
    }

    @Test
    void aPlanWithAnotherTextUnderOneIssueIsNotWalked() throws Exception {
        walk("LG-2207", "LG-2207-pass");
        Path changed = Files.writeString(folder.resolve("changed.toml"), DemoPart.SCREW_CARRIER.planText() + "\n# changed\n");
        Typed typed = walk(changed.toString(), "LG-2207-pass");
        assertEquals(2, typed.exit());
        assertTrue(typed.err().get(0).startsWith("Run LG-2207-C-014 was begun with another text of LG-2207 rev C, issue 6."), typed.err()::toString);
    }

    @Test
    void aPartThatPassedButIsNotAcceptedDoesNotEndWell() throws Exception {
        Path readings = Files.writeString(folder.resolve("r.toml"), DemoPart.SCREW_CARRIER.passingReadings()
                .replace("meaning = \"accepted\"", "meaning = \"not accepted\""));
        Typed typed = walk("LG-2207", readings);
        assertEquals(1, typed.exit());
        assertEquals("Conforms. Not accepted by Inspector 1.", typed.out().get(35));
    }

    @Test
    void furtherSignaturesFollowTheOneThatClosesAndASecondPersonIsAnother() throws Exception {
        Path readings = Files.writeString(folder.resolve("r.toml"), DemoPart.SCREW_CARRIER.passingReadings()
                .replace("[[gauge]]\nid = \"IN-1\"", """
                        [[signature]]
                        by = "setter2"
                        meaning = "measured again"

                        [[signature]]
                        by = "Inspector 2"
                        meaning = "measured again"

                        [[gauge]]
                        id = "IN-1\""""));
        Typed typed = walk("LG-2207", readings);
        assertEquals(1, typed.exit());
        assertTrue(typed.out().contains("The signature of setter2 was not taken. This person made the part or took its readings. A second person must be another."),
                typed.out()::toString);
    }

    @Test
    void whatDoesNotComeToWhatTheFileExpectsIsPrintedAndTheExitCodeSaysSo() throws Exception {
        Path readings = Files.writeString(folder.resolve("r.toml"), DemoPart.SCREW_CARRIER.passingReadings()
                .replace("13 = \"pass\"", "13 = \"cut again\"").replace("outcome = \"conforms\"", "outcome = \"does not conform\""));
        Typed typed = walk("LG-2207", readings);
        assertEquals(1, typed.exit());
        assertEquals(List.of("Check 13: the readings file expects \"cut again\", and it came to \"pass\".",
                "The outcome: the readings file expects \"does not conform\", and it came to \"conforms\"."),
                typed.out().subList(typed.out().size() - 2, typed.out().size()));
    }

    /** The fourth example is conceded, which ends with 1; both come to what they expect. */
    @Test
    void theExamplesOfTheGuideAreWalkedAsTheyStand() throws Exception {
        String guide = Files.readString(Path.of("../checklists/plan-file.md"));
        List<String> examples = Pattern.compile("```toml\n(.*?)```", Pattern.DOTALL).matcher(guide).results().map(found -> found.group(1)).toList();
        for (int i = 0; i < examples.size(); i += 2) {
            Path plan = Files.writeString(folder.resolve("plan-%d.toml".formatted(i)), examples.get(i));
            Path readings = Files.writeString(folder.resolve("r-%d.toml".formatted(i)), examples.get(i + 1));
            Typed typed = walk(plan, readings);
            assertEquals(i == 0 ? 0 : 1, typed.exit(), typed::toString);
            assertTrue(typed.out().stream().noneMatch(line -> line.contains("expects")), typed.out()::toString);
        }
    }

    @Test
    void aReadingIsStruckOutAndTakenAgain() throws Exception {
        Path readings = Files.writeString(folder.resolve("r.toml"), DemoPart.SCREW_CARRIER.passingReadings()
                .replace("\"70.04\", \"70.02\"", "{ reading = \"70.40\", struck = \"Jaws not closed.\" }, \"70.04\", \"70.02\""));
        Typed typed = walk("LG-2207", readings);
        assertEquals(0, typed.exit(), typed::toString);
        try (KeptEntries kept = SqliteLedger.openToRead(store)) {
            assertEquals(List.of("70.40 struck", "70.04", "70.02"), Shop.sheet(kept, "LG-2207-C-014").line(7).passes().get(0).readings().stream()
                    .map(reading -> reading.typed().text() + (reading.struck().isPresent() ? " struck" : "")).toList());
        }
    }

    private static String upToTheBore() {
        String sample = DemoPart.SCREW_CARRIER.passingReadings();
        return sample.substring(0, sample.indexOf("[[step]]\nnumber = 14"));
    }

    private static String head() {
        String sample = DemoPart.SCREW_CARRIER.passingReadings();
        return sample.substring(0, sample.indexOf("[[step]]"));
    }

    @Test
    void withoutTheTemperaturesThatMatterACheckStaysOpen() throws Exception {
        Path readings = Files.writeString(folder.resolve("r.toml"),
                upToTheBore().replace("part_temperature = \"22.8\"\ngauge_temperature = \"20.5\"\n", ""));
        Typed typed = walk("LG-2207", readings);
        assertEquals(1, typed.exit());
        assertEquals("13|Bore Ø30 H7|30.015 so far|Open|2 more to take.", Typed.columns(typed.out().get(12)));
    }

    @Test
    void aTemperatureThatLooksLikeASlipIsRefusedUnlessTheFileSaysThatItIsMeant() throws Exception {
        Path readings = Files.writeString(folder.resolve("r.toml"), upToTheBore().replace("\"22.8\"", "\"73.0\""));
        Typed typed = walk("LG-2207", readings);
        assertEquals(2, typed.exit(), typed::toString);
        assertTrue(typed.trouble().contains(" is far off: about 18\u201323 is expected."), typed.trouble());
        Files.writeString(readings, upToTheBore().replace("\"22.8\"", "{ reading = \"73.0\", keep = true }"));
        assertEquals(1, walk("LG-2207", readings).exit());
        try (KeptEntries kept = SqliteLedger.openToRead(store)) {
            assertEquals(Optional.of(Degrees.of("73.0", CELSIUS)), Shop.sheet(kept, "LG-2207-C-014-2").line(13).passes().get(1).temperature(Body.PART));
        }
    }

    @Test
    void aReadingThatLooksLikeASlipIsRefusedUnlessTheFileSaysThatItIsMeant() throws Exception {
        Path readings = Files.writeString(folder.resolve("r.toml"),
                DemoPart.SCREW_CARRIER.passingReadings().replace("\"70.04\", \"70.02\"", "\"7.004\", \"70.02\""));
        Typed typed = walk("LG-2207", readings);
        assertEquals(2, typed.exit(), typed::toString);
        assertTrue(typed.trouble().startsWith("Check 7: 7.004 is far off: about 70.000 is expected."), typed.trouble());
        Files.writeString(readings, DemoPart.SCREW_CARRIER.passingReadings()
                .replace("\"70.04\", \"70.02\"", "{ reading = \"7.004\", keep = true }, \"70.02\""));
        Typed kept = walk("LG-2207", readings);
        assertEquals(1, kept.exit(), kept::toString);
        assertTrue(kept.out().get(6).contains(" 7.004 "), kept.out().get(6));
    }

    @Test
    void aFigureInTheOtherUnitIsKeptAsTypedAndConvertedExactly() throws Exception {
        Path readings = Files.writeString(folder.resolve("r.toml"), DemoPart.SCREW_CARRIER.passingReadings()
                .replace("\"70.04\", \"70.02\"", "{ reading = \"2.7575\", unit = \"in\" }, \"70.02\""));
        Typed typed = walk("LG-2207", readings);
        assertEquals(0, typed.exit(), typed::toString);
        try (KeptEntries kept = SqliteLedger.openToRead(store)) {
            Run.Reading read = Shop.sheet(kept, "LG-2207-C-014").line(7).passes().get(0).readings().get(0);
            assertEquals(new Written("2.7575", Unit.INCH), read.typed());
            // 2.7575 × 25.4 = 70.0405, by hand
            assertEquals(Length.of("70.0405", Unit.MILLIMETRE), read.typed().length());
        }
        assertTrue(typed.out().get(6).contains(" 70.041 ") || typed.out().get(6).contains(" 70.0405 "), typed.out().get(6));
    }

    @Test
    void aMasterFarOffThePlansIsRefused() throws Exception {
        String sample = DemoPart.SCREW_CARRIER.passingReadings();
        Path readings = Files.writeString(folder.resolve("r.toml"),
                sample.replaceAll("certified = \"30\\.[0-9]+\"", "certified = \"30.900\""));
        Typed typed = walk("LG-2207", readings);
        assertEquals(2, typed.exit(), typed::toString);
        assertTrue(typed.trouble().startsWith("Check 13: 30.900 is far off: about 30.000 is expected."), typed.trouble());
    }

    /** Wires 0.080 larger than they are said to be make every size come out 0.240 too large. */
    @Test
    void wiresFarOffThePlansAreTakenOnlyWhereTheyAreMeant() throws Exception {
        String sample = DemoPart.SCREW_CARRIER.passingReadings();
        Typed typed = walk("LG-2207", Files.writeString(folder.resolve("r.toml"), sample.replace("certified = \"3.620\"", "certified = \"3.700\"")));
        assertEquals(2, typed.exit(), typed::toString);
        assertTrue(typed.trouble().startsWith("Check 21: 3.700 is far off: about 3.620 is expected."), typed.trouble());
        Typed meant = walk("LG-2207", Files.writeString(folder.resolve("r.toml"),
                sample.replace("certified = \"3.620\"", "certified = \"3.700\", keep = true").replace("\"40.742\", \"40.755\", \"40.749\"",
                        "\"40.982\", \"40.995\", \"40.989\"")));
        assertEquals(0, meant.exit(), meant::toString);
    }

    @Test
    void aReadingNoSumCanBeDoneWithStopsTheWalkAndKeepsWhatWasTaken() throws Exception {
        Path readings = Files.writeString(folder.resolve("r.toml"),
                DemoPart.SCREW_CARRIER.passingReadings().replace("\"70.04\", \"70.02\"", "\"-70.04\", \"70.02\""));
        Typed typed = walk("LG-2207", readings);
        assertEquals("Check 7: That must be more than nought. (-70.04) What was taken before it is kept as run LG-2207-C-014. "
                + "Put the readings file right.", typed.trouble());
        assertEquals(0, Typed.line("verify", store).exit());
    }

    @Test
    void oneStoreHoldsManyRuns() throws Exception {
        walk("LG-2207", "LG-2207-pass");
        walk("WB-118", "WB-118-pass");
        Typed again = walk("LG-2207", "LG-2207-pass");
        assertEquals(0, again.exit());
        assertEquals(6, Typed.files(out).size());
        assertTrue(Typed.files(out).stream().anyMatch(file -> file.getFileName().toString().startsWith("LG-2207-C-014-2-")));
        assertEquals("Serial 014 has earlier runs in this store: LG-2207-C-014", again.out().get(again.out().size() - 1));
    }

    @Test
    void aGaugeTheStoreKnowsTheOtherWayRoundIsRefused() throws Exception {
        walk("LG-2207", "LG-2207-pass");
        Path readings = Files.writeString(folder.resolve("r.toml"),
                DemoPart.SCREW_CARRIER.passingReadings().replace("sense = \"rises\"", "sense = \"falls\""));
        assertEquals("The store and the readings file do not agree which way the number of gauge BG-2 goes. "
                + "Find out at its master which is right; nothing was taken.", walk("LG-2207", readings).trouble());
    }

    @Test
    void everyProblemOfAReadingsFileIsALine() throws Exception {
        Path readings = Files.writeString(folder.resolve("r.toml"), DemoPart.SCREW_CARRIER.passingReadings()
                .replace("serial = \"014\"\n", "").replace("\"70.04\"", "70.04"));
        Typed typed = walk("LG-2207", readings);
        assertEquals(2, typed.exit());
        assertEquals(2, typed.err().size(), typed.err()::toString);
        assertTrue(typed.err().stream().allMatch(line -> line.startsWith(readings + ":")));
        assertFalse(Files.exists(store));
    }

    @Test
    void troubleWithAFileIsFoundBeforeAnythingIsKept() throws Exception {
        Path empty = Files.createFile(folder.resolve("empty.toml"));
        assertEquals(empty + " is empty. Name a file with something in it.", walk("LG-2207", empty).trouble());
        assertEquals("There is no readings file LG-2207-pas. The demo readings that come along are those of LG-2207 and WB-118, with "
                + "-pass or -fail behind it.", walk("LG-2207", "LG-2207-pas").trouble());
        assertEquals("There is no plan file LG-2208. The demo plans that come along are LG-2207 and WB-118.",
                walk("LG-2208", "LG-2207-pass").trouble());
        Files.writeString(out, "mine");
        assertEquals(out + " is a file. Give a folder to write into; it is made where there is none.",
                walk("LG-2207", "LG-2207-pass").trouble());
        assertEquals(2, walk("WB-118", "LG-2207-pass").exit());
        assertFalse(Files.exists(store));
        assertEquals("mine", Files.readString(out));
    }

    @Test
    void whatIsNoStoreIsLeftAsItIs() throws Exception {
        store = Files.writeString(folder.resolve("plan.toml"), DemoPart.SCREW_CARRIER.planText());
        assertEquals("plan.toml is not a Tenthwise store. It was left as it is. Give the path of a store.",
                walk("LG-2207", "LG-2207-pass").trouble());
        assertEquals(DemoPart.SCREW_CARRIER.planText(), Files.readString(store));
        store = Files.createDirectory(folder.resolve("folder"));
        assertEquals("folder is not a Tenthwise store. It was left as it is. Give the path of a store.",
                walk("LG-2207", "LG-2207-pass").trouble());
        try (Stream<Path> left = Files.list(store)) {
            assertEquals(0, left.count());
        }
    }

    @Test
    void aStoreHeldByAnotherIsNotWrittenTo() throws Exception {
        try (SqliteLedger held = SqliteLedger.open(store)) {
            assertEquals("s.db is in use by another Tenthwise. Nothing was written to it from here. Close the other one, then open it "
                    + "again.", walk("LG-2207", "LG-2207-pass").trouble());
            assertEquals(0, held.head().seq());
        }
    }
}
