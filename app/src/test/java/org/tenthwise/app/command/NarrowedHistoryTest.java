package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NarrowedHistoryTest {

    @TempDir
    private Path folder;

    private Path store;

    @BeforeEach
    void walkTwoParts() {
        store = HistoryRows.walkTwoParts(folder);
    }

    private List<CSVRecord> history(Object... narrowed) throws IOException {
        return HistoryRows.of(store, narrowed);
    }

    @Test
    void aHistoryIsNarrowedByPartSerialGaugePersonDayAndCharacteristic() throws IOException {
        assertEquals(Set.of("WB-118"), HistoryRows.column(history("--part", "WB-118"), "part"));
        CSVRecord any = history().stream()
                .filter(row -> !row.get("gauge").isEmpty())
                .findFirst()
                .orElseThrow();
        for (String name : List.of("serial", "gauge", "person")) {
            assertEquals(Set.of(any.get(name)), HistoryRows.column(history("--" + name, any.get(name)), name));
        }
        assertEquals(
                Set.of(any.get("number")),
                HistoryRows.column(
                        history("--part", any.get("part"), "--characteristic", any.get("characteristic")), "number"));
        String day = any.get("time").substring(0, 10);
        assertEquals(history().size(), history("--from", day, "--to", day).size());
        assertEquals(0, history("--to", "2025-12-31").size());
        assertEquals(0, history("--from", "2027-01-01").size());
    }

    /** A drawing is asked by its own numbers, however they are written. */
    @Test
    void aHistoryIsAskedByBalloonAndByDesignator() throws IOException {
        HistoryRows.walkTheGateRollerPin(folder);
        List<CSVRecord> all = history("--part", "GR-341");
        String balloon = all.stream()
                .map(row -> row.get("balloon"))
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElseThrow();
        assertEquals(
                all.stream().filter(row -> row.get("balloon").equals(balloon)).count(),
                history("--part", "GR-341", "--balloon", balloon.toLowerCase()).size());
        assertEquals(Set.of("13"), HistoryRows.column(history("--part", "LG-2207", "--balloon", "13"), "number"));
        List<CSVRecord> designated =
                all.stream().filter(row -> !row.get("designator").isEmpty()).toList();
        assertTrue(designated.size() > 1, "nothing is designated");
        String designator = designated.get(0).get("designator");
        List<CSVRecord> found = history("--designator", designator.toUpperCase());
        assertEquals(Set.of(designator), HistoryRows.column(found, "designator"));
        assertEquals(
                designated.stream()
                        .filter(row -> row.get("designator").equals(designator))
                        .count(),
                found.size());
        assertEquals(0, history("--balloon", "no-such").size());
    }

    /** Readings, runs and characteristics are looked for in one way: what finds the one finds the other. */
    @Test
    void whatFindsTheReadingsFindsTheRunsAndTheCharacteristics() throws IOException {
        CSVRecord any = history().stream()
                .filter(row ->
                        !row.get("gauge").isEmpty() && row.get("characteristic").matches("\\p{ASCII}+"))
                .findFirst()
                .orElseThrow();
        for (String by : List.of("serial", "lot", "machine", "person", "characteristic")) {
            for (String written : List.of(
                    any.get(by),
                    any.get(by).toLowerCase(Locale.ROOT),
                    any.get(by).toUpperCase(Locale.ROOT))) {
                isFoundAlike(any, by, written);
            }
        }
        isFoundAlike(any, "gauge", any.get("gauge"));
    }

    private void isFoundAlike(CSVRecord any, String by, String written) throws IOException {
        Set<String> runs = HistoryRows.column(history("--" + by, written), "run");
        assertTrue(runs.contains(any.get("run")), () -> by + " " + written);
        assertEquals(runs, HistoryRows.column(history("--view", "runs", "--" + by, written), "run"));
        assertTrue(HistoryRows.column(history("--view", "series", "--" + by, written), "run")
                .contains(any.get("run")));
    }

    @Test
    void whatNoneHasFindsNone() throws IOException {
        for (String by : List.of(
                "--part",
                "--serial",
                "--lot",
                "--machine",
                "--gauge",
                "--person",
                "--characteristic",
                "--balloon",
                "--designator")) {
            for (String view : List.of("readings", "runs", "series")) {
                assertEquals(List.of(), history("--view", view, by, "no-such"), by + " " + view);
            }
        }
        for (String view : List.of("readings", "runs", "series")) {
            assertEquals(List.of(), history("--view", view, "--verdict", "fail"), view);
            assertEquals(List.of(), history("--view", view, "--kind", "last-piece"), view);
        }
    }
}
