package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** An invented washer, walked whole and in part, and what the reports drawn up of a store say. */
abstract class ReportsAtHand extends Walking {

    private static final String PLAN =
            """
            format = 1
            part = "WA-5"
            revision = "A"
            issue = "1"
            name = "Washer"
            material = "steel 1.4301"
            drawing = "WA-5 sheet 1"
            unit = "mm"

            [[operation]]
            number = 10
            name = "All"

            [[step]]
            number = 1
            operation = 10
            kind = "size"
            feature = "thickness"
            name = "Thickness"
            drawing = "5 ±0.1"
            method = "Micrometer."
            lower = 4.9
            upper = 5.1
            places = ["anywhere"]
            gauge_kind = "micrometer"

            [[step]]
            number = 2
            operation = 10
            kind = "diameter"
            name = "Outside"
            drawing = "Ø30 ±0.1"
            method = "Micrometer."
            lower = 29.9
            upper = 30.1
            places = ["anywhere"]
            gauge_kind = "micrometer"
            """;

    /** Walks a washer into a store; {@code occasion} says what for. */
    final void walked(Path into, String serial, String occasion) throws IOException {
        String readings =
                """
                format = 1
                part = "WA-5"
                revision = "A"
                serial = "%s"
                lot = "L-1"
                machine = "Lathe 4"
                by = "Setter 1"
                %s

                [[gauge]]
                id = "MC-1"
                kind = "micrometer"
                certificate = "K-77"
                due = "2099-01-31"

                [[step]]
                number = 1
                gauge = "MC-1"
                readings = ["5.020"]

                %s
                [close]
                by = "Inspector 1"
                meaning = "%s"
                """
                        .formatted(
                                serial,
                                occasion,
                                occasion.isEmpty()
                                        ? "[[step]]\nnumber = 2\ngauge = \"MC-1\"\nreadings = [\"30.010\"]\n"
                                        : "",
                                "machined and measured");
        Typed typed = Typed.line(
                "walk",
                file("washer.toml", PLAN),
                "--readings",
                file("washer.readings.toml", readings),
                "--store",
                into,
                "--out",
                out);
        assertEquals(List.of(), typed.err(), typed::toString);
    }

    /** In part, on another run. */
    final void again(Path into, String serial, String baseline) throws IOException {
        walked(
                into,
                serial,
                """
                purpose = "first article partial"
                baseline = "%s"
                reason = "new tool"
                affected = ["1"]
                """
                        .formatted(baseline));
    }

    final Typed report(Path of, String identifier, Object... more) {
        return Typed.line(Stream.concat(
                        Stream.of(
                                "first-article",
                                "--store",
                                of,
                                "--out",
                                out.resolve("fair"),
                                "--identifier",
                                identifier),
                        Stream.of(more))
                .toArray());
    }

    static Object[] together(List<Object> first, List<Object> more) {
        return Stream.concat(first.stream(), more.stream()).toArray();
    }

    final Typed drawnUp(Path of, String identifier, Object... more) {
        List<Object> line = new ArrayList<>(List.of(
                "--part", "WA-5", "--by", "Planner 1", "--reason", "new tool", "--organization", "Invented works"));
        line.addAll(List.of("--route", "R-1"));
        line.addAll(List.of(more));
        return report(of, identifier, line.toArray());
    }

    /** The rows of a form, each by the heads of its columns. */
    final List<Map<String, String>> rows(String identifier, int form) throws IOException {
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(form(identifier, form)))
                .stream()
                .map(CSVRecord::toMap)
                .toList();
    }

    /** What a form written last says. */
    final String form(String identifier, int form) throws IOException {
        Path file = Typed.files(out.resolve("fair")).stream()
                .filter(each -> each.getFileName().toString().matches(identifier + "-\\d+\\.form-" + form + "\\.csv"))
                .reduce((earlier, later) -> later)
                .orElseThrow();
        return Files.readString(file);
    }
}
