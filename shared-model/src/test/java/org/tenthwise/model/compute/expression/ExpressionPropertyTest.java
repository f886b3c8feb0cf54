package org.tenthwise.model.compute.expression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.tenthwise.model.words.Refused;

class ExpressionPropertyTest {

    private static final List<String> SHAPES = List.of(
            "(a − b) / 2 − c",
            "sqrt(a*a + b*b) − c",
            "a*sin(3*b) + c",
            "max(a, b, c) − min(a, b) + mean(b, c)",
            "abs(a − b) + abs(b − c)",
            "a*b / (c*c + 1)",
            "atan(a / (c*c + 2)) − b",
            "a^3 − b^2 + a*c",
            "acos((a − b) / 40) + c");

    private static Map<String, List<BigDecimal>> ranges(RandomGenerator random) {
        Map<String, List<BigDecimal>> sizes = new LinkedHashMap<>();
        for (String name : List.of("a", "b", "c")) {
            sizes.put(name, List.of(figure(random), figure(random)));
        }
        return sizes;
    }

    private static BigDecimal figure(RandomGenerator random) {
        return BigDecimal.valueOf(random.nextInt(-8_000, 8_000), 3);
    }

    @Property(tries = 300)
    void nothingInTheRangesIsBelowTheLeastOrAboveTheGreatest(@ForAll long seed, @ForAll @IntRange(max = 8) int shape) {
        java.util.Random random = new java.util.Random(seed);
        Map<String, List<BigDecimal>> ranges = ranges(random);
        Expression expression = Expression.of(SHAPES.get(shape));
        Reach reach = expression.over(ranges);
        BigDecimal near = new BigDecimal("1e-8");
        for (int i = 0; i < 50; i++) {
            Map<String, List<BigDecimal>> point = new LinkedHashMap<>();
            ranges.forEach((name, ends) -> {
                BigDecimal share = BigDecimal.valueOf(random.nextInt(0, 1_001), 3);
                point.put(
                        name,
                        List.of(ends.get(0)
                                .add(ends.get(1).subtract(ends.get(0)).multiply(share))));
            });
            BigDecimal there = expression.over(point).value();
            assertTrue(there.compareTo(reach.least().subtract(near)) >= 0, () -> there + " below " + reach);
            assertTrue(there.compareTo(reach.greatest().add(near)) <= 0, () -> there + " above " + reach);
        }
    }

    @Property(tries = 200)
    void aLengthIsTheSameInMillimetresAndInches(@ForAll long seed, @ForAll @IntRange(max = 2) int shape) {
        String text = List.of("(a − b) / 2 − c", "sqrt(a*a + b*b) − c", "a*b / sqrt(b*b + c*c)")
                .get(shape);
        Map<String, List<BigDecimal>> inches = ranges(new java.util.Random(seed));
        Map<String, List<BigDecimal>> millimetres = new LinkedHashMap<>();
        BigDecimal inch = new BigDecimal("25.4");
        inches.forEach((name, sizes) ->
                millimetres.put(name, sizes.stream().map(inch::multiply).toList()));
        try {
            Reach one = Expression.of(text).over(inches);
            Reach other = Expression.of(text).over(millimetres);
            assertEquals(one.least().multiply(inch).doubleValue(), other.least().doubleValue(), 1e-7);
            assertEquals(
                    one.greatest().multiply(inch).doubleValue(),
                    other.greatest().doubleValue(),
                    1e-7);
        } catch (Refused e) {
            assertEquals(2, shape, e.getMessage());
        }
    }

    @Property(tries = 2000)
    void whateverIsTypedIsReadOrRefusedInWords(@ForAll long seed) {
        java.util.Random random = new java.util.Random(seed);
        String letters = "ab(()) +-*/^,.0123sincosmaxpi×÷−√#";
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(0, 25); i >= 0; i--) {
            text.append(letters.charAt(random.nextInt(letters.length())));
        }
        try {
            Expression read = Expression.of(text.toString());
            assertEquals(
                    read.with(name -> name),
                    Expression.of(read.with(name -> name)).with(name -> name),
                    "printed, it reads as it was");
        } catch (Refused e) {
            assertTrue(e.getMessage().length() > 10, e.getMessage());
        }
    }
}
