package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Signs;

/**
 * Plans and readings files spoiled at random, by bytes and by keys and values: never anything comes of them but a plan
 * or problems.
 */
class SpoiledPlansTest {

    private static final int LONGEST_PROBLEM = 2_000;

    private static final List<String> KEYS = List.of(
            "[[\"\\uD800\"step]]",
            "\"\\uDC00\" = 1",
            "[" + "a.".repeat(3_000) + "a]",
            "a.".repeat(20_000) + "a = 1",
            "x".repeat(50_000) + " = 1",
            "\"" + "\\u202E".repeat(2_000) + "\" = 1",
            "\"\" = \"\"",
            "\"a\\nb\" = 1",
            "step = 3",
            "[step]",
            "[[operation.step]]",
            "step.number = 1",
            "[[step.places]]",
            "hold = [[[1]]]",
            "format = 1");

    private static final List<String> VALUES = List.of(
            "[".repeat(5_000),
            "[".repeat(500) + "]".repeat(500),
            "{ a = ".repeat(60) + "1" + " }".repeat(60),
            "1e999999999",
            "-0",
            "99999999999999999999",
            "." + "1",
            "1.",
            "1,5",
            "nan",
            "-inf",
            "0x7FFFFFFFFFFFFFFF",
            "2026-11-25",
            "true",
            "\"\"",
            "\"\\u0000\"",
            "\"\u202E\"",
            "'''\n'''",
            "[]",
            "{}",
            "[1, \"a\", {}]",
            "\"" + "w".repeat(20_000) + "\"",
            "1" + "0".repeat(5_000),
            "-1",
            "0",
            "0.0000000001");

    private static final String BYTES = "\"'[]{}=.,#\n\r\t_e-+0x\u0000\u0007\uD83D\u202E\\";

    @ParameterizedTest
    @CsvSource({"SCREW_CARRIER, 250", "WINCH_BARREL_END, 250"})
    void aSpoiledPlanIsAPlanOrProblems(DemoPart part, int times) {
        Random random = new Random(1_118);
        int refused = 0;
        for (int i = 0; i < times; i++) {
            PlanReading reading = new PlanReader().read(spoiled(part.planText(), random));
            if (reading instanceof PlanReading.Bad bad) {
                judge(bad.problems());
                refused++;
            }
        }
        assertTrue(refused > times / 3, refused + " of " + times + " were refused");
    }

    @ParameterizedTest
    @CsvSource({"SCREW_CARRIER, 150", "WINCH_BARREL_END, 150"})
    void aSpoiledReadingsFileIsReadingsOrProblems(DemoPart part, int times) {
        Random random = new Random(2_207);
        Plan plan = part.plan();
        int refused = 0;
        for (int i = 0; i < times; i++) {
            SampleReading reading = new SampleReader().read(spoiled(part.failingReadings(), random), plan);
            if (reading instanceof SampleReading.Bad bad) {
                judge(bad.problems());
                refused++;
            }
        }
        assertTrue(refused > times / 3, refused + " of " + times + " were refused");
    }

    private static void judge(List<PlanProblem> problems) {
        assertFalse(problems.isEmpty());
        for (PlanProblem problem : problems) {
            assertTrue(problem.line() >= 1 && problem.column() >= 1, problem::toString);
            String what = problem.what().toString();
            assertFalse(what.isBlank(), problem::toString);
            assertEquals(Optional.empty(), Signs.hiddenIn(what), problem::toString);
            assertTrue(what.length() <= LONGEST_PROBLEM, problem::toString);
        }
    }

    /** Most of the steps are left out first, which makes it quick. */
    private static String spoiled(String text, Random random) {
        List<String> parts = new ArrayList<>(Arrays.asList(text.split("(?=\n\\[\\[step]])")));
        while (parts.size() > 5) {
            parts.remove(1 + random.nextInt(parts.size() - 1));
        }
        String spoiled = String.join("", parts);
        for (int slips = 0; slips < 1 + random.nextInt(3); slips++) {
            spoiled = random.nextBoolean() ? byBytes(spoiled, random) : byLines(spoiled, random);
        }
        return spoiled;
    }

    private static String byBytes(String text, Random random) {
        if (random.nextInt(4) == 0) {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            return new String(bytes, StandardCharsets.UTF_8);
        }
        StringBuilder spoiled = new StringBuilder(text);
        int at = random.nextInt(spoiled.length());
        switch (random.nextInt(3)) {
            case 0 -> spoiled.deleteCharAt(at);
            case 1 -> spoiled.insert(at, BYTES.charAt(random.nextInt(BYTES.length())));
            default -> spoiled.setCharAt(at, BYTES.charAt(random.nextInt(BYTES.length())));
        }
        return spoiled.toString();
    }

    private static String byLines(String text, Random random) {
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n")));
        int at = random.nextInt(lines.size());
        String line = lines.get(at);
        switch (random.nextInt(5)) {
            case 0 -> lines.add(at, KEYS.get(random.nextInt(KEYS.size())));
            case 1 -> lines.set(at, KEYS.get(random.nextInt(KEYS.size())));
            case 2 -> lines.remove(at);
            case 3 -> lines.add(random.nextInt(lines.size()), line);
            default ->
                lines.set(
                        at,
                        line.contains("=")
                                ? line.substring(0, line.indexOf('=') + 1) + " "
                                        + VALUES.get(random.nextInt(VALUES.size()))
                                : line);
        }
        return String.join("\n", lines) + "\n";
    }
}
