package org.tenthwise.app.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.handbook.Handbook;

/** Every published case that comes along, through the sums as they are. */
class CasesTest {

    private static final Map<Topic, List<Row>> ROWS = new EnumMap<>(Topic.class);

    @BeforeAll
    static void runThemAll() {
        Comparison comparison = new Comparison(Handbook.sums());
        Arrays.stream(Topic.values())
                .forEach(topic -> ROWS.put(topic, comparison.of(topic).rows()));
    }

    @Test
    void noFigureDisagreesWithTheOnePublished() {
        List<String> wrong = ROWS.entrySet().stream()
                .flatMap(topic -> topic.getValue().stream()
                        .filter(row -> row.agreement() == Agreement.DISAGREES)
                        .map(row -> "%s | %s | %s | %s: published %s, computed %s %s"
                                .formatted(
                                        topic.getKey().word(),
                                        row.of().source(),
                                        row.of().name(),
                                        row.key(),
                                        row.published(),
                                        row.computed(),
                                        row.because())))
                .toList();
        assertEquals("", String.join("\n", wrong), CasesTest::counts);
    }

    @Test
    void limitsOfThreadsAgreeToTheLastDigitButForTwoInAHundred() {
        List<Row> published = published(Topic.THREADS);
        long agree = published.stream().filter(Row::toTheLastDigit).count();
        assertTrue(agree * 100 >= published.size() * 98L, CasesTest::counts);
    }

    @Test
    void zonesAgreeToTheLastDigitWhereTheyAreNotSetAside() {
        assertEquals(
                List.of(),
                published(Topic.LIMITS).stream()
                        .filter(row -> row.agreement() != Agreement.ASIDE && !row.toTheLastDigit())
                        .toList(),
                CasesTest::counts);
    }

    /** So that a file cut short is seen; the counts are those of the printed tables gone through. */
    @ParameterizedTest
    @CsvSource({
        "THREADS, 200, 420",
        "WIRES, 200, 300",
        "CUTTING, 12, 2",
        "LIMITS, 850, 1500",
        "RUNOUT, 40, 15",
        "DECISION, 40, 5",
        "TEMPERATURE, 40, 25",
        "STATISTICS, 240, 110"
    })
    void everyTopicHasItsCases(Topic topic, int cases, int published) {
        assertTrue(Cases.of(topic).size() >= cases, CasesTest::counts);
        assertTrue(published(topic).size() >= published, CasesTest::counts);
    }

    @Test
    void whatIsLeftOutSaysWhy() {
        assertTrue(Cases.leftOut().size() >= 50);
    }

    private static List<Row> published(Topic topic) {
        return ROWS.get(topic).stream()
                .filter(row -> row.of().standing() == Standing.PUBLISHED)
                .toList();
    }

    private static String counts() {
        return ROWS.entrySet().stream()
                .map(topic -> topic.getKey().word() + " "
                        + topic.getValue().stream()
                                .collect(Collectors.groupingBy(Row::agreement, Collectors.counting())))
                .collect(Collectors.joining("; "));
    }
}
