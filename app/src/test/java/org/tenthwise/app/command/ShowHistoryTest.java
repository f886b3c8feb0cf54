package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.SixtyBalloons;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.Sample;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

class ShowHistoryTest {

    @TempDir
    private Path folder;

    private Path store;

    @BeforeEach
    void walkTwoParts() {
        store = HistoryRows.walkTwoParts(folder);
    }

    /** An empty table would say that nothing was measured. */
    @Test
    void daysTheWrongWayRoundAreRefused() {
        Typed typed = Typed.line("history", "--store", store, "--from", "2026-02-01", "--to", "2026-01-31");
        assertEquals(2, typed.exit());
        assertTrue(typed.err().get(0).contains("2026-02-01 is after 2026-01-31"), () -> String.join("\n", typed.err()));
    }

    private List<CSVRecord> history(Object... narrowed) throws IOException {
        return HistoryRows.of(store, narrowed);
    }

    @Test
    void everyReadingOfTheStoreHasOneRowUnderItsEntry() throws Exception {
        Set<String> taken = new TreeSet<>();
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            kept.runs().forEach(run -> kept.entries(run).stream()
                    .filter(entry -> entry.event() instanceof StepEvent.ReadingTaken)
                    .forEach(entry -> taken.add(String.valueOf(entry.seq()))));
        }
        List<CSVRecord> readings =
                history().stream().filter(row -> !row.get("entry").isEmpty()).toList();
        assertEquals(taken, HistoryRows.column(readings, "entry"));
        assertEquals(taken.size(), readings.size());
    }

    @Test
    void aReadingStandsBesideItsLimitsItsSizeAndItsGauge() throws Exception {
        // the demo bore Ø30 H7 is read on a gauge set on a 30.000 ring; ISO 286-2 gives +21 µm and 0
        List<CSVRecord> bore = history("--part", "LG-2207", "--characteristic", "13");
        CSVRecord first = bore.get(0);
        assertEquals(
                List.of("30.000", "30.021", "mm", "pass", "bore-gauge"),
                List.of(
                        first.get("lower_limit"),
                        first.get("upper_limit"),
                        first.get("unit"),
                        first.get("verdict"),
                        first.get("gauge_kind")));
        // first −0.142 from 30.000, less what heat adds: too small, cut again, and read in size
        assertEquals("cut-again", first.get("place_verdict"));
        assertEquals("pass", bore.get(bore.size() - 1).get("place_verdict"));
        assertTrue(first.get("size").startsWith("29.85"), first::toString);
        assertEquals("replaced", first.get("pass_counts"));
        assertEquals("yes", bore.get(bore.size() - 1).get("pass_counts"));
    }

    @Test
    void everyRowSaysWhereItsCharacteristicStandsOnTheDrawing() throws Exception {
        Path plan = Files.writeString(folder.resolve("sixty.toml"), SixtyBalloons.TEXT);
        Path readings = Files.writeString(
                folder.resolve("sixty.readings.toml"),
                """
                format = 1
                part = "SB-60"
                revision = "B"
                serial = "001"
                lot = "L-1"
                machine = "Lathe 4"
                by = "Setter 1"

                [[gauge]]
                id = "MC-1"
                kind = "micrometer"

                [[step]]
                number = 1
                answers = ["yes"]

                [[step]]
                number = 2
                gauge = "MC-1"
                readings = ["22.9"]

                [[step]]
                number = 5
                gauge = "MC-1"
                readings = ["15.004", "15.011"]

                [[step]]
                number = 55
                gauge = "MC-1"
                readings = ["5.004", "5.011"]
                """);
        Typed.line("walk", plan, "--readings", readings, "--store", store, "--out", folder.resolve("sixty"));
        assertEquals(
                List.of("1||||", "2|20|||", "5|12A|1|C7|", "5|12A|1|C7|", "55|3.2|1|E5|key", "55|3.2|1|E5|key"),
                history("--part", "SB-60").stream()
                        .map(row -> Stream.of("number", "balloon", "sheet", "drawing_zone", "designator")
                                .map(row::get)
                                .collect(Collectors.joining("|")))
                        .toList());
        assertEquals(
                Set.of("Ø15 +0.02/0"),
                HistoryRows.column(history("--part", "SB-60", "--characteristic", "5"), "requirement"));
        // a plan without balloons: the number of a characteristic is its balloon
        assertEquals(
                Set.of("13"), HistoryRows.column(history("--part", "LG-2207", "--characteristic", "13"), "balloon"));
        assertEquals(Set.of(""), HistoryRows.column(history("--part", "LG-2207", "--characteristic", "1"), "balloon"));
    }

    /** Nobody reads a size that is worked out: who found the last of what goes in stands for it, and no gauge. */
    @Test
    void whatIsWorkedOutOfOthersHasARowOnceAllOfThemAreFound() throws Exception {
        HistoryRows.walkTheGateRollerPin(folder);
        List<CSVRecord> web = history("--part", "GR-341", "--characteristic", "41");
        assertEquals(1, web.size());
        CSVRecord row = web.get(0);
        assertEquals("pass", row.get("verdict"));
        assertTrue(row.get("judged").matches("\\d+\\.\\d+"), row::toString);
        assertEquals(
                List.of("", "", "", ""),
                Stream.of("reading", "gauge_kind", "gauge", "entry")
                        .map(row::get)
                        .toList());
        assertTrue(!row.get("person").isEmpty() && !row.get("time").isEmpty(), row::toString);
        assertEquals(
                1,
                history("--part", "GR-341", "--characteristic", "41", "--person", row.get("person"))
                        .size());
        assertEquals(
                0,
                history("--part", "GR-341", "--characteristic", "41", "--gauge", "GP-0.25")
                        .size());
    }

    @Test
    void aReadingOfAnEarlierPassKeepsAllPlacesItWasTypedWith() throws Exception {
        long seq;
        try (Ledger ledger = new SqliteStores().open(store)) {
            Entry turned = ledger.entries(ledger.runs().get(1)).stream()
                    .filter(entry -> entry.event() instanceof StepEvent.ReadingTaken)
                    .findFirst()
                    .orElseThrow();
            StepEvent.ReadingTaken read = (StepEvent.ReadingTaken) turned.event();
            seq = ledger.append(
                            turned.run(),
                            Sample.AT,
                            "Setter 1",
                            new StepEvent.ReadingTaken(
                                    read.step(), read.slot(), new Written("0.0110003", Unit.MILLIMETRE)))
                    .seq();
            ledger.append(
                    turned.run(),
                    Sample.AT,
                    "Setter 1",
                    new StepEvent.PassBegun(read.step(), StepEvent.PassBegun.Why.values()[0]));
        }
        CSVRecord row = history().stream()
                .filter(of -> of.get("entry").equals(String.valueOf(seq)))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("0.0110003", "0.0110003"), List.of(row.get("reading"), row.get("size")));
    }

    @Test
    void aStepThatWasOnlyAnsweredHasARow() throws Exception {
        List<CSVRecord> answered =
                history().stream().filter(row -> row.get("entry").isEmpty()).toList();
        assertTrue(answered.size() > 5, answered::toString);
        assertEquals(Set.of("pass"), HistoryRows.column(answered, "verdict"));
    }

    @Test
    void whatALimitGaugeSaidIsFoundByItsMark() throws Exception {
        List<CSVRecord> answered = history("--gauge", "TR-40");
        assertEquals(1, answered.size());
        assertEquals(
                List.of("limit-gauge", "TR-40", "pass", ""),
                List.of(
                        answered.get(0).get("gauge_kind"),
                        answered.get(0).get("gauge"),
                        answered.get(0).get("verdict"),
                        answered.get(0).get("entry")));
    }

    @Test
    void aStepToBeAnsweredAnewStillTellsWhoAnsweredIt() throws Exception {
        CSVRecord answered = history("--gauge", "TR-40").get(0);
        try (Ledger ledger = new SqliteStores().open(store)) {
            ledger.append(
                    answered.get("run"),
                    Sample.AT,
                    "Inspector 9",
                    new StepEvent.PassBegun(
                            Integer.parseInt(answered.get("number")), StepEvent.PassBegun.Why.values()[0]));
        }
        CSVRecord now = history("--gauge", "TR-40").get(0);
        assertEquals("open", now.get("verdict"));
        assertEquals(
                List.of(answered.get("person"), answered.get("time")), List.of(now.get("person"), now.get("time")));
    }

    @Test
    void aTextThatASpreadsheetWouldRunIsMadeSafe() throws Exception {
        try (Ledger ledger = new SqliteStores().open(store)) {
            String run = ledger.runs().get(1);
            ledger.append(
                    run,
                    Sample.AT,
                    "=1+1",
                    ledger.entries(run).stream()
                            .map(entry -> entry.event())
                            .filter(StepEvent.ReadingTaken.class::isInstance)
                            .findFirst()
                            .orElseThrow());
        }
        assertTrue(HistoryRows.column(history(), "person").contains("'=1+1"));
    }

    @Test
    void aRunThatCannotBeJudgedIsNamedAndNotLeftOutInSilence() throws Exception {
        try (Ledger ledger = new SqliteStores().open(store)) {
            ledger.append(
                    "X-1-A-7",
                    Sample.AT,
                    "A. Turner",
                    new Event.Begun(
                            new PartId("X-1", "A"), "7", "", "", new PlanSource("format = 99\n", "ab".repeat(32))));
        }
        Typed typed = Typed.line("history", "--store", store);
        assertEquals(1, typed.exit());
        assertEquals(
                List.of("Run X-1-A-7 is not among them: it cannot be judged by this release. Its entries are safe."),
                typed.err());
        assertTrue(typed.out().size() > 100);
    }

    @Test
    void aStoreThatIsNotThereIsNamedAndADayThatIsNone() {
        assertEquals(
                2, Typed.line("history", "--store", folder.resolve("none.db")).exit());
        assertEquals(
                2, Typed.line("history", "--store", store, "--from", "Monday").exit());
    }

    /** Of the chamfer of the sample, two passes of two places: figures with marks, in the unit beside them. */
    @Test
    void anAngleHasItsMarksAndItsUnit() throws Exception {
        assertEquals(
                List.of("30°35′ ° ′ fail", "30°10′ ° ′ pass", "30°10′ ° ′ pass", "29°50′ ° ′ pass"),
                history("--gauge", "BP-1").stream()
                        .peek(row -> assertEquals(
                                "29°30′ 30°30′ ° ′ 30°10′",
                                Stream.of("lower_limit", "upper_limit", "unit", "judged")
                                        .map(row::get)
                                        .collect(Collectors.joining(" "))))
                        .map(row -> Stream.of("size", "reading_unit", "place_verdict")
                                .map(row::get)
                                .collect(Collectors.joining(" ")))
                        .toList());
    }
}
