package org.tenthwise.app.house;

import static java.util.stream.Collectors.toCollection;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.sums.Answer;
import org.tenthwise.app.sums.Given;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.Typed;
import org.tenthwise.app.sums.cutting.CuttingSums;
import org.tenthwise.app.sums.decision.DecisionSums;
import org.tenthwise.app.sums.fit.FitSums;
import org.tenthwise.app.sums.gauge.GaugeSums;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.sums.statistics.StatisticsSums;
import org.tenthwise.app.sums.temperature.TemperatureSums;
import org.tenthwise.app.sums.thread.ThreadSums;
import org.tenthwise.app.sums.written.Unreadable;
import org.tenthwise.app.sums.written.WrittenObject;

/** {@code sums.md} knows every sum and every key, and its examples have answers. */
class SumsGuideTest {

    private static final Pattern SUM = Pattern.compile("(?m)^\\| ((?:`[a-z0-9-]+`(?:, )?)+) \\|(.*)$");
    private static final Pattern WORD = Pattern.compile("`([A-Za-z0-9_-]+)`");

    private final Sums sums = Handbook.sums();

    @Test
    void everySumStandsInTheGuideAndNoOther() throws IOException {
        Set<String> named = SUM.matcher(guide()).results().flatMap(row -> WORD.matcher(row.group(1)).results())
                .map(word -> word.group(1)).collect(toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(sums.names()), named);
    }

    @Test
    void everyKeyStandsInTheGuide() throws IOException {
        Set<String> words = WORD.matcher(guide()).results().map(word -> word.group(1)).collect(toCollection(TreeSet::new));
        List<Sum> all = Stream.of(ThreadSums.all(), FitSums.all(), GaugeSums.all(), TemperatureSums.all(), DecisionSums.all(),
                CuttingSums.all(), StatisticsSums.all()).flatMap(List::stream).toList();
        assertEquals(sums.names().size(), all.size());
        Set<String> missing = all.stream().flatMap(sum -> sum.keys().stream()).filter(key -> !words.contains(key)).collect(toCollection(TreeSet::new));
        assertEquals(Set.of(), missing);
    }

    @Test
    void theExamplesHaveAnswers() throws IOException, Unreadable {
        for (String line : guide().lines().filter(text -> text.startsWith("{\"id\"")).toList()) {
            Map<String, Typed> keys = new LinkedHashMap<>(WrittenObject.read(line));
            keys.remove("id");
            String calc = new Given(Optional.empty(), Map.of("calc", keys.remove("calc"))).text("calc");
            assertInstanceOf(Answer.class, sums.ask(calc, Given.written(keys)), line);
        }
    }

    private static String guide() throws IOException {
        return Files.readString(Path.of("sums.md"));
    }
}
