package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.tenthwise.checklists.catalogue.ExamplePart;

/** What {@code history} writes of parts that were walked. */
final class HistoryRows {

    private static final String STORE = "s.db";

    private HistoryRows() {}

    /** @return the store that has them */
    static Path walkTwoParts(Path folder) {
        Path store = folder.resolve(STORE);
        for (String part : List.of("WB-118", "LG-2207")) {
            Typed.line("walk", part, "--readings", part + "-pass", "--store", store, "--out", folder.resolve(part));
        }
        return store;
    }

    /** Into the same store. */
    static void walkTheGateRollerPin(Path folder) throws IOException {
        Path plan = Files.writeString(folder.resolve("gr.toml"), ExamplePart.GATE_ROLLER_PIN.planText());
        Path readings =
                Files.writeString(folder.resolve("gr.readings.toml"), ExamplePart.GATE_ROLLER_PIN.passingReadings());
        Typed.line(
                "walk", plan, "--readings", readings, "--store", folder.resolve(STORE), "--out", folder.resolve("gr"));
    }

    static List<CSVRecord> of(Path store, Object... narrowed) throws IOException {
        Object[] line = Stream.concat(Stream.of("history", "--store", store), Stream.of(narrowed))
                .toArray();
        Typed typed = Typed.line(line);
        assertEquals(0, typed.exit(), () -> String.join("\n", typed.err()));
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(String.join("\r\n", typed.out())))
                .getRecords();
    }

    static Set<String> column(List<CSVRecord> rows, String name) {
        return rows.stream().map(row -> row.get(name)).collect(Collectors.toCollection(TreeSet::new));
    }
}
