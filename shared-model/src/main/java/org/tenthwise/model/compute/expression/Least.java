package org.tenthwise.model.compute.expression;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import org.tenthwise.model.words.Refused;

/**
 * The least an expression comes to while its names go over their ranges.
 *
 * <p>Where it only rises or only falls with a name, that name is at an end of its range; where it does neither, the
 * range is halved, until what may be left is less than a billionth. So an extreme between the ends is found, and one at
 * the ends is worked out exactly there.
 *
 * <p>In the unit of the sizes; the least at the ends is exact as {@link ExactArithmetic} is, one between them to 1e-9.
 *
 * <p>Where part of the ranges has no answer (a division by zero, the root of less than zero), there is none.
 *
 * <p>Source: R. E. Moore, R. B. Kearfott, M. J. Cloud, Introduction to Interval Analysis, SIAM 2009, chapters 6 and 8
 * (from memory).
 */
final class Least {

    private static final double CONTENT = 1e-9;
    private static final double LEVEL = 1e-10;
    private static final int MOST_PARTS = 5_000;

    private final Term term;
    private final PriorityQueue<Ranges> left =
            new PriorityQueue<>(Comparator.comparingDouble(Ranges::bound).thenComparingDouble(Ranges::width));
    private Optional<BigDecimal> best = Optional.empty();

    private Least(Term term) {
        this.term = term;
    }

    /** @throws Refused if part of the ranges has no answer, or none can be found in reasonable time */
    static BigDecimal of(Term term, Ranges whole) {
        return new Least(term).search(whole);
    }

    private BigDecimal search(Ranges whole) {
        left.add(whole);
        for (int seen = 0; !left.isEmpty(); seen++) {
            if (seen == MOST_PARTS) {
                throw new Refused("model.expression.too-involved");
            }
            Ranges part = left.remove();
            if (part.isPoint()) {
                take(part);
            } else if (!isBeaten(part)) {
                divide(part);
            }
        }
        return best.orElseThrow();
    }

    private boolean isBeaten(Ranges part) {
        return best.isPresent() && part.bound() >= best.get().doubleValue() - CONTENT;
    }

    private void divide(Ranges part) {
        Slope slope;
        try {
            slope = part.slope(term);
        } catch (Refused e) {
            if (part.width() < CONTENT) {
                throw e;
            }
            left.addAll(part.halves());
            return;
        }
        Ranges bounded = part.withBound(slope.value().low());
        Ranges shrunk = atItsEnds(bounded, slope);
        if (!shrunk.equals(bounded)) {
            left.add(shrunk);
            return;
        }
        take(bounded);
        if (bounded.width() >= CONTENT) {
            left.addAll(bounded.halves());
        }
    }

    private void take(Ranges part) {
        BigDecimal middle = part.inTheMiddle(term);
        best = Optional.of(best.map(middle::min).orElse(middle));
    }

    /** With each name it only rises or only falls with at the end where the expression is less. */
    private static Ranges atItsEnds(Ranges part, Slope slope) {
        Ranges shrunk = part;
        List<String> names = new ArrayList<>(part.low().keySet());
        for (int i = 0; i < names.size(); i++) {
            Span with = slope.with().get(i);
            String name = names.get(i);
            if (with.low() >= -LEVEL) {
                shrunk = shrunk.with(name, part.low().get(name));
            } else if (with.high() <= LEVEL) {
                shrunk = shrunk.with(name, part.high().get(name));
            }
        }
        return shrunk;
    }
}
