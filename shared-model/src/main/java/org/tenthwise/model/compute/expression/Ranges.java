package org.tenthwise.model.compute.expression;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Every name of an expression with the sizes it has at its places; between the least and the greatest of them it may
 * have any.
 *
 * @param places one or more sizes a name, in one order of names
 * @param low of each name
 * @param high of each name
 * @param bound the expression is not below this anywhere in here
 */
record Ranges(
        Map<String, List<BigDecimal>> places, Map<String, BigDecimal> low, Map<String, BigDecimal> high, double bound) {

    private static final List<Function> OVER_PLACES = List.of(Function.MIN, Function.MAX, Function.MEAN);
    private static final BigDecimal HALF = new BigDecimal("0.5");

    static Ranges of(Map<String, List<BigDecimal>> places) {
        Map<String, BigDecimal> low = new LinkedHashMap<>();
        Map<String, BigDecimal> high = new LinkedHashMap<>();
        ExactArithmetic exact = new ExactArithmetic();
        places.forEach((name, sizes) -> {
            low.put(name, exact.of(Function.MIN, sizes));
            high.put(name, exact.of(Function.MAX, sizes));
        });
        return new Ranges(places, low, high, Double.NEGATIVE_INFINITY);
    }

    /** Every name at the mean of its sizes. */
    static Ranges ofMeans(Map<String, List<BigDecimal>> places) {
        Map<String, BigDecimal> means = new LinkedHashMap<>();
        places.forEach((name, sizes) -> means.put(name, ExactArithmetic.mean(sizes)));
        return new Ranges(places, means, means, Double.NEGATIVE_INFINITY);
    }

    boolean isPoint() {
        return low.equals(high);
    }

    double width() {
        return low.keySet().stream().mapToDouble(this::width).max().orElse(0);
    }

    private double width(String name) {
        return high.get(name).subtract(low.get(name)).doubleValue();
    }

    /** The same with {@code name} at one size. */
    Ranges with(String name, BigDecimal size) {
        return between(name, size, size);
    }

    Ranges withBound(double lower) {
        return new Ranges(places, low, high, Math.max(bound, lower));
    }

    /** The two halves along its longest side. */
    List<Ranges> halves() {
        String longest = low.keySet().stream()
                .max((one, other) -> Double.compare(width(one), width(other)))
                .orElseThrow();
        BigDecimal middle = middle(longest);
        return List.of(between(longest, low.get(longest), middle), between(longest, middle, high.get(longest)));
    }

    private Ranges between(String name, BigDecimal from, BigDecimal to) {
        Map<String, BigDecimal> lows = new LinkedHashMap<>(low);
        Map<String, BigDecimal> highs = new LinkedHashMap<>(high);
        lows.put(name, from);
        highs.put(name, to);
        return new Ranges(places, lows, highs, bound);
    }

    private BigDecimal middle(String name) {
        return low.get(name).add(high.get(name)).multiply(HALF);
    }

    /** What {@code term} is in the middle, exactly. */
    BigDecimal inTheMiddle(Term term) {
        ExactArithmetic exact = new ExactArithmetic();
        return term.in(exact, new Names<>() {
            @Override
            public BigDecimal size(String name) {
                return middle(name);
            }

            @Override
            public BigDecimal over(Function function, String name) {
                return exact.of(function, places.get(name));
            }
        });
    }

    /**
     * Between what {@code term} lies in here, and how steeply it rises: with each name in their order, then with the
     * least, the greatest and the mean of each over its places, as if they were sizes of their own.
     */
    Slope slope(Term term) {
        List<String> order = new ArrayList<>(low.keySet());
        int slots = order.size() * (1 + OVER_PLACES.size());
        return term.in(new SlopeArithmetic(slots), new Names<>() {
            @Override
            public Slope size(String name) {
                Span span = new Span(low.get(name).doubleValue(), high.get(name).doubleValue());
                return Slope.of(span, order.indexOf(name), slots);
            }

            @Override
            public Slope over(Function function, String name) {
                double figure =
                        new ExactArithmetic().of(function, places.get(name)).doubleValue();
                int block = 1 + OVER_PLACES.indexOf(function);
                return Slope.of(Span.of(figure), block * order.size() + order.indexOf(name), slots);
            }
        });
    }
}
