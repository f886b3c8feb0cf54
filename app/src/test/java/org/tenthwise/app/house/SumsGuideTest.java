package org.tenthwise.app.house;

import static java.util.stream.Collectors.toCollection;
import static java.util.stream.Collectors.toMap;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.reference.PublishedCases;
import org.tenthwise.app.reference.Topic;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.sums.written.NotJson;
import org.tenthwise.app.sums.written.WrittenObject;

/** {@code sums.md} has a row for every sum, with its keys and its results, and an example that has an answer. */
class SumsGuideTest {

    /** A sum, what goes in and what comes out. */
    private static final Pattern ROW = Pattern.compile("(?m)^\\| `([a-z0-9-]+)` \\| (.*) \\| (.*) \\|$");

    private static final Pattern WORD = Pattern.compile("`([A-Za-z0-9_-]+)`");

    private final Sums sums = Handbook.sums();

    @Test
    void everySumStandsInTheGuideOnceAndNoOther() throws IOException {
        assertEquals(
                sums.names().stream().sorted().toList(),
                ROW.matcher(guide()).results().map(row -> row.group(1)).sorted().toList());
    }

    @Test
    void everyKeyStandsInTheRowOfItsSum() throws IOException {
        Map<String, Set<String>> in = words(2);
        assertEquals(
                Set.of(),
                sums.descriptions().stream()
                        .flatMap(sum -> missing(sum.name(), sum.keys().stream(), in))
                        .collect(toCollection(TreeSet::new)));
    }

    /** Of every published case and of every example, lists and tables gone through. */
    @Test
    void everyResultStandsInTheRowOfItsSum() throws IOException, NotJson {
        Map<String, Set<String>> out = words(3);
        Set<String> missing = new TreeSet<>();
        for (Asked asked : examples()) {
            missing.addAll(missing(asked, out));
        }
        for (Topic topic : Topic.values()) {
            PublishedCases.of(topic)
                    .forEach(one -> missing.addAll(missing(new Asked(one.calc(), SumInput.written(one.given())), out)));
        }
        assertEquals(Set.of(), missing);
    }

    @Test
    void everySumHasAnExampleThatHasAnAnswer() throws IOException, NotJson {
        Set<String> shown = new TreeSet<>();
        for (Asked asked : examples()) {
            assertInstanceOf(SumResult.class, sums.ask(asked.calc(), asked.given()), asked::toString);
            shown.add(asked.calc());
        }
        assertEquals(new TreeSet<>(sums.names()), shown);
    }

    private record Asked(String calc, SumInput given) {}

    private static List<Asked> examples() throws IOException, NotJson {
        List<Asked> all = new ArrayList<>();
        for (String line : guide().lines().filter(text -> text.startsWith("{")).toList()) {
            Map<String, SumValue> keys = new LinkedHashMap<>(WrittenObject.read(line));
            keys.remove("id");
            all.add(new Asked(((SumValue.Text) keys.remove("calc")).text(), SumInput.written(keys)));
        }
        return all;
    }

    private Set<String> missing(Asked asked, Map<String, Set<String>> out) {
        return sums.ask(asked.calc(), asked.given()) instanceof SumResult answer
                ? missing(asked.calc(), keys(answer.written()), out).collect(toCollection(TreeSet::new))
                : Set.of();
    }

    private static Stream<String> missing(String sum, Stream<String> keys, Map<String, Set<String>> rows) {
        return keys.filter(key -> !rows.getOrDefault(sum, Set.of()).contains(key))
                .map(key -> sum + ": " + key);
    }

    private static Stream<String> keys(SumValue value) {
        return value instanceof SumValue.Many many
                ? many.values().stream().flatMap(SumsGuideTest::keys)
                : value instanceof SumValue.Fields fields
                        ? fields.values().entrySet().stream()
                                .flatMap(field -> Stream.concat(Stream.of(field.getKey()), keys(field.getValue())))
                        : Stream.of();
    }

    /** What stands in backticks in one column, row by row. */
    private static Map<String, Set<String>> words(int column) throws IOException {
        return ROW.matcher(guide()).results().collect(toMap(row -> row.group(1), row -> WORD.matcher(row.group(column))
                .results()
                .map(word -> word.group(1))
                .collect(toCollection(TreeSet::new))));
    }

    private static String guide() throws IOException {
        return Files.readString(Path.of("sums.md"));
    }
}
