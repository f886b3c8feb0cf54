package org.tenthwise.app.house;

import static java.util.stream.Collectors.toCollection;
import static java.util.stream.Collectors.toMap;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.reference.PublishedCases;
import org.tenthwise.app.reference.Topic;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumDescription;
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
    void everyRowIsWrittenAsItsSumDescribesItself() throws IOException {
        assertEquals(
                sums.descriptions().stream().map(SumsGuideTest::row).sorted().toList(),
                ROW.matcher(guide()).results().map(MatchResult::group).sorted().toList());
    }

    /** Writes the rows anew; what stands around them stays. Run from {@code app}. */
    public static void main(String[] arguments) throws IOException {
        Map<String, String> rows =
                Handbook.sums().descriptions().stream().collect(toMap(SumDescription::name, SumsGuideTest::row));
        Files.writeString(
                Path.of("sums.md"),
                ROW.matcher(guide()).replaceAll(row -> Matcher.quoteReplacement(rows.get(row.group(1)))));
    }

    private static String row(SumDescription sum) {
        return "| `%s` | %s | %s |".formatted(sum.name(), sum.takenIn(), sum.givenOut());
    }

    /** What needs to be there is needed: without it the example of the sum is refused. */
    @Test
    void everyNeededInputIsNeeded() throws IOException, NotJson {
        Set<String> notNeeded = new TreeSet<>();
        for (Asked asked : examples()) {
            SumDescription sum = sums.descriptions().stream()
                    .filter(one -> one.name().equals(asked.calc()))
                    .findFirst()
                    .orElseThrow();
            for (List<Input<?>> either : sum.inputs()) {
                if (either.size() == 1 && either.get(0).needed()) {
                    Map<String, SumValue> without =
                            new LinkedHashMap<>(asked.given().values());
                    without.remove(either.get(0).key());
                    if (sums.ask(sum.name(), new SumInput(asked.given().unit(), without)) instanceof SumResult) {
                        notNeeded.add(sum.name() + ": " + either.get(0));
                    }
                }
            }
        }
        assertEquals(Set.of(), notNeeded);
    }

    /** What an answer always has is in the answer of every example, and an answer has nothing else than it says. */
    @Test
    void everyAnswerHasWhatItsSumSaysAndNothingElse() throws IOException, NotJson {
        for (Asked asked : examples()) {
            SumDescription sum = sums.descriptions().stream()
                    .filter(one -> one.name().equals(asked.calc()))
                    .findFirst()
                    .orElseThrow();
            SumResult answer = assertInstanceOf(SumResult.class, sums.ask(asked.calc(), asked.given()));
            Set<String> there = answer.written().values().keySet();
            Set<String> said = sum.outputs().stream().map(Output::key).collect(toCollection(TreeSet::new));
            assertTrue(said.containsAll(there), () -> sum.name() + there);
            sum.outputs().stream()
                    .filter(Output::always)
                    .forEach(output -> assertTrue(there.contains(output.key()), () -> sum.name() + ": " + output));
        }
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
