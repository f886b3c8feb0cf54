package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.reference.Agreement;
import org.tenthwise.app.reference.ComparedFigure;
import org.tenthwise.app.reference.Comparison;
import org.tenthwise.app.reference.PublishedCase;
import org.tenthwise.app.reference.PublishedCases;
import org.tenthwise.app.reference.Topic;
import org.tenthwise.app.sums.handbook.Handbook;

class ShowReferenceTest {

    @ParameterizedTest
    @EnumSource(Topic.class)
    void everyFigureOfATopicHasItsLineUnderItsSource(Topic topic) {
        Typed typed = Typed.line("reference", "--topic", topic.word());
        assertEquals(0, typed.exit(), () -> String.join("\n", typed.out()));
        List<PublishedCase> cases = PublishedCases.of(topic);
        String all = String.join("\n", typed.out()).replaceAll("\\s+", " ");
        cases.forEach(one -> assertTrue(all.contains(one.source()), one::source));
        List<String> rows = typed.out().subList(2, typed.out().indexOf(""));
        assertEquals(
                cases.stream().mapToInt(one -> one.published().size()).sum(),
                rows.stream()
                        .filter(line -> line.matches(".*  (agrees|agrees within [0-9.]+|set aside)"))
                        .count());
    }

    @Test
    void theColumnsStandUnderTheirNames() {
        List<String> out = Typed.line("reference", "--topic", "temperature").out();
        assertEquals("Temperature", out.get(0));
        String names = out.get(1);
        List<String> rows =
                out.stream().filter(line -> line.endsWith("  agrees")).toList();
        for (String column : List.of("result", "published", "computed", "agreement")) {
            int at = names.indexOf(column);
            rows.forEach(row -> assertTrue(row.charAt(at - 1) == ' ' && row.charAt(at) != ' ', row));
        }
    }

    @Test
    void totalsAloneHaveNoLineForEachFigure() {
        Typed typed = Typed.line("reference", "--totals");
        assertEquals("Totals", typed.out().get(0));
        int rows = IntStream.range(0, typed.out().size())
                .filter(i -> typed.out().get(i).startsWith("  all "))
                .findFirst()
                .orElseThrow();
        assertEquals(Topic.values().length + 2, rows);
        assertTrue(typed.out().contains("Left out, and why"), typed.out()::toString);
    }

    @Test
    void whatPublishedMeansIsSaidUnderTheTotals() {
        String all = String.join(
                        " ",
                        Typed.line("reference", "--topic", "runout", "--totals").out())
                .replaceAll("\\s+", " ");
        assertTrue(
                all.contains("figures are published: read in print, or taken from a collection, a chart or a page that "
                        + "hands on what "
                        + "is printed elsewhere; the source stands with each."),
                all);
    }

    /** Two figures that look alike would show nothing. */
    @Test
    void everyFigureSetAsideLooksUnlikeTheOnePublished() {
        List<ComparedFigure> aside = Stream.of(Topic.values())
                .map(new Comparison(Handbook.sums())::of)
                .flatMap(finding -> finding.rows(Agreement.ASIDE).stream())
                .toList();
        assertFalse(aside.isEmpty());
        aside.forEach(row -> assertNotEquals(row.published(), row.computed(), row.of()::name));
    }

    @Test
    void aTopicThatIsNotThereIsRefusedWithThoseThatAre() {
        assertEquals(
                "There is no topic \"thread\". Use one of: %s."
                        .formatted(Stream.of(Topic.values()).map(Topic::word).collect(Collectors.joining(", "))),
                Typed.line("reference", "--topic", "thread").trouble());
    }
}
