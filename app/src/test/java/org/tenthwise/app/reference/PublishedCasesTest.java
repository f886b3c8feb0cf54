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
class PublishedCasesTest {

    private static final Map<Topic, List<ComparedFigure>> ROWS = new EnumMap<>(Topic.class);

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
        assertEquals("", String.join("\n", wrong), PublishedCasesTest::counts);
    }

    @Test
    void limitsOfThreadsAgreeToTheLastDigitButForTwoInAHundred() {
        List<ComparedFigure> published = published(Topic.THREADS);
        long agree = published.stream().filter(ComparedFigure::toTheLastDigit).count();
        assertTrue(agree * 100 >= published.size() * 98L, PublishedCasesTest::counts);
    }

    @Test
    void zonesAgreeToTheLastDigitWhereTheyAreNotSetAside() {
        assertEquals(
                List.of(),
                published(Topic.LIMITS).stream()
                        .filter(row -> row.agreement() != Agreement.ASIDE && !row.toTheLastDigit())
                        .toList(),
                PublishedCasesTest::counts);
    }

    /** So that a file cut short is seen; the counts are those of the printed tables gone through. */
    @ParameterizedTest
    @CsvSource({
        "THREADS, 200, 420",
        "WIRES, 200, 300",
        "CUTTING, 12, 2",
        "LIMITS, 850, 1500",
        "CHAIN, 12, 10",
        "GAUGING, 10, 10",
        "RUNOUT, 40, 15",
        "POSITION, 29, 25",
        "TAPER, 45, 41",
        "ROUGHNESS, 33, 20",
        "DECISION, 40, 5",
        "TEMPERATURE, 40, 25",
        "STATISTICS, 240, 110"
    })
    void everyTopicHasItsCases(Topic topic, int cases, int published) {
        assertTrue(PublishedCases.of(topic).size() >= cases, PublishedCasesTest::counts);
        assertTrue(published(topic).size() >= published, PublishedCasesTest::counts);
    }

    @Test
    void whatIsLeftOutSaysWhy() {
        assertTrue(PublishedCases.leftOut().size() >= 50);
    }

    private static List<ComparedFigure> published(Topic topic) {
        return ROWS.get(topic).stream()
                .filter(row -> row.of().standing() == SourceKind.PUBLISHED)
                .toList();
    }

    private static String counts() {
        return ROWS.entrySet().stream()
                .map(topic -> topic.getKey().word() + " "
                        + topic.getValue().stream()
                                .collect(Collectors.groupingBy(ComparedFigure::agreement, Collectors.counting())))
                .collect(Collectors.joining("; "));
    }
}
