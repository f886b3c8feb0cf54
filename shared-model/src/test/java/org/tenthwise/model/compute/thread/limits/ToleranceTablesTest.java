package org.tenthwise.model.compute.thread.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.table.Table;

/**
 * The tables of ISO 965-1 and ISO 2903 against what their makers say of them: figures of the R40 series of preferred
 * numbers (ISO 3), a grade four steps above the one before, the nut five steps above the screw, and growing with pitch
 * and diameter.
 */
class ToleranceTablesTest {

    /** ISO 3, R40, rounded to whole micrometres below 100. */
    private static final List<Integer> R40 = r40();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "metric-crests.csv",
                "metric-pitch-external.csv",
                "metric-pitch-internal.csv",
                "trapezoidal-pitch-external.csv",
                "trapezoidal-pitch-internal.csv"
            })
    void everyToleranceIsAPreferredNumberAndFourStepsAboveTheGradeBefore(String file) {
        int seen = 0;
        for (Map<String, String> row : table(file).rows()) {
            for (Map.Entry<String, Integer> grade : grades(row).entrySet()) {
                assertTrue(R40.contains(grade.getValue()), () -> file + row);
                String next = grade.getKey().replaceAll("\\d", "")
                        + (Integer.parseInt(grade.getKey().replaceAll("\\D", "")) + 1);
                if (grades(row).containsKey(next)) {
                    assertEquals(
                            R40.indexOf(grade.getValue()) + 4,
                            R40.indexOf(grades(row).get(next)),
                            () -> file + row);
                }
                seen++;
            }
        }
        assertTrue(seen > 100, file);
    }

    /**
     * Grades 4, 6 and 8 of the major diameter are eight steps apart; at a pitch of 8 the table has 1180 and not 1120
     * (from memory).
     */
    @Test
    void gradesOfTheMajorDiameterAreEightStepsApart() {
        for (Map<String, String> row : table("metric-crests.csv").rows()) {
            Map<String, Integer> grades = grades(row);
            assertEquals(R40.indexOf(grades.get("e4")) + 8, R40.indexOf(grades.get("e6")), row::toString);
            if (grades.containsKey("e8") && !row.get("pitch").equals("8")) {
                assertEquals(R40.indexOf(grades.get("e6")) + 8, R40.indexOf(grades.get("e8")), row::toString);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"metric, 4, 51", "trapezoidal, 7, 45"})
    void theNutHasFiveStepsMoreThanTheScrew(String form, String grade, int atLeast) {
        List<Map<String, String>> screws = table(form + "-pitch-external.csv").rows();
        List<Map<String, String>> nuts = table(form + "-pitch-internal.csv").rows();
        assertEquals(screws.size(), nuts.size());
        assertTrue(screws.size() >= atLeast - 4, () -> "only %d rows".formatted(screws.size()));
        for (int i = 0; i < screws.size(); i++) {
            Map<String, String> screw = screws.get(i);
            Map<String, String> nut = nuts.get(i);
            assertEquals(
                    List.of(screw.get("above"), screw.get("to"), screw.get("pitch")),
                    List.of(nut.get("above"), nut.get("to"), nut.get("pitch")));
            assertEquals(
                    R40.indexOf(grades(screw).get(grade)) + 5,
                    R40.indexOf(grades(nut).get(grade)),
                    screw::toString);
        }
    }

    /**
     * ISO 965-1: Td2(6) = 90 P^0.4 d^0.1 with d the geometric mean of the range; no figure is further from it than one
     * step and a half.
     */
    @ParameterizedTest
    @CsvSource({
        "metric-pitch-external.csv, 6, 1",
        "metric-pitch-internal.csv, 4, 1.32",
        "trapezoidal-pitch-external.csv, 7, 1",
        "trapezoidal-pitch-internal.csv, 7, 1.32"
    })
    void pitchTolerancesFollowTheFormulaToAStepAndAHalf(String file, int grade, double factor) {
        for (Map<String, String> row : table(file).rows()) {
            double mean = Math.sqrt(Double.parseDouble(row.get("above")) * Double.parseDouble(row.get("to")));
            double sixth = factor * 90 * Math.pow(Double.parseDouble(row.get("pitch")), 0.4) * Math.pow(mean, 0.1);
            double formula = sixth * Math.pow(10, (grade - 6) / 10.0);
            double steps = 40 * Math.log10(grades(row).get(String.valueOf(grade)) / formula);
            assertTrue(Math.abs(steps) < 1.5, () -> "%s %s: %.2f steps".formatted(file, row, steps));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "metric-pitch-external.csv",
                "metric-pitch-internal.csv",
                "trapezoidal-pitch-external.csv",
                "trapezoidal-pitch-internal.csv"
            })
    void tolerancesGrowWithThePitchAndWithTheDiameter(String file) {
        List<Map<String, String>> rows = table(file).rows();
        for (Map<String, String> one : rows) {
            for (Map<String, String> other : rows) {
                boolean coarser = Double.parseDouble(other.get("pitch")) >= Double.parseDouble(one.get("pitch"));
                boolean larger = Double.parseDouble(other.get("above")) >= Double.parseDouble(one.get("above"));
                if (coarser && larger) {
                    grades(one)
                            .forEach((grade, figure) -> assertTrue(
                                    grades(other).getOrDefault(grade, Integer.MAX_VALUE) >= figure,
                                    () -> "%s: %s %s".formatted(file, one, other)));
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"metric-deviations.csv", "metric-crests.csv", "trapezoidal-crests.csv"})
    void figuresByPitchGrowWithThePitch(String file) {
        List<Map<String, String>> rows = table(file).rows();
        assertTrue(rows.size() > 20, file);
        for (int i = 1; i < rows.size(); i++) {
            Map<String, Integer> before = grades(rows.get(i - 1));
            Map<String, Integer> after = grades(rows.get(i));
            before.forEach((heading, figure) ->
                    assertTrue(after.getOrDefault(heading, Integer.MAX_VALUE) >= figure, after::toString));
        }
    }

    /**
     * ISO 965-1: es of g is −(15 + 11 P), that of e −(50 + 11 P), of f −(30 + 11 P); all set by hand, so to five
     * micrometres and a twentieth.
     */
    @ParameterizedTest
    @CsvSource({"g, 15", "e, 50", "f, 30"})
    void deviationsAreNearTheirFormula(String letter, int start) {
        for (Map<String, String> row : table("metric-deviations.csv").rows()) {
            double formula = start + 11 * Double.parseDouble(row.get("pitch"));
            if (grades(row).containsKey(letter)) {
                assertEquals(formula, grades(row).get(letter), 5 + formula / 20, row::toString);
            }
        }
    }

    /** Adjusted by hand (ASME B1.13M, 6.2): formula and R40 alone would give 132, 425, 60, 450 and 80. */
    @Test
    void figuresThatWereAdjustedByHandAreInTheTables() {
        RangeTable crests = RangeTable.beside("metric-crests.csv");
        assertEquals("0.140", crests.at(figure("0.5"), "i6").orElseThrow().toPlainString());
        assertEquals("0.450", crests.at(figure("2.5"), "i6").orElseThrow().toPlainString());
        assertEquals("0.056", crests.at(figure("0.25"), "i5").orElseThrow().toPlainString());
        assertEquals("0.475", crests.at(figure("4"), "e6").orElseThrow().toPlainString());
        assertEquals(
                "0.075",
                RangeTable.beside("metric-pitch-external.csv")
                        .at(figure("3"), figure("0.5"), "6")
                        .orElseThrow()
                        .toPlainString());
    }

    /** Yamawa, General Catalogue 2021, pp. 646 and 657, after ISO 965-1: TD2 in micrometres for 4H, 5H and 6H. */
    @ParameterizedTest
    @CsvSource({
        "1.6, 0.35, 53, 67, 85",
        "2.5, 0.45, 60, 75, 95",
        "3.5, 0.6, 71, 90, 112",
        "5, 0.8, 80, 100, 125",
        "8, 1.25, 100, 125, 160"
    })
    void nutTolerancesAreThePublishedOnes(String diameter, String pitch, int fourth, int fifth, int sixth) {
        RangeTable table = RangeTable.beside("metric-pitch-internal.csv");
        List<Integer> figures = List.of("4", "5", "6").stream()
                .map(grade -> table.at(figure(diameter), figure(pitch), grade)
                        .orElseThrow()
                        .movePointRight(3)
                        .intValueExact())
                .toList();
        assertEquals(List.of(fourth, fifth, sixth), figures);
    }

    private static BigDecimal figure(String text) {
        return new BigDecimal(text);
    }

    private static Table table(String file) {
        return Table.beside(RangeTable.class, file);
    }

    private static Map<String, Integer> grades(Map<String, String> row) {
        Map<String, Integer> grades = new TreeMap<>();
        row.forEach((heading, cell) -> {
            if (!List.of("above", "to", "pitch").contains(heading) && !cell.equals(Table.NOTHING)) {
                grades.put(heading, Integer.parseInt(cell));
            }
        });
        return grades;
    }

    private static List<Integer> r40() {
        int[] decade = {
            100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300, 315,
            335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950
        };
        List<Integer> all = new ArrayList<>();
        for (int figure : decade) {
            all.add((int) Math.rint(figure / 10.0));
        }
        for (int figure : decade) {
            all.add(figure);
        }
        for (int figure : decade) {
            all.add(figure * 10);
        }
        return List.copyOf(all);
    }
}
