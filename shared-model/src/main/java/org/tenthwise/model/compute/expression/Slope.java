package org.tenthwise.model.compute.expression;

import java.util.Collections;
import java.util.List;
import java.util.function.BinaryOperator;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * Between what a part of an expression lies while its names go over their ranges, and how steeply it can rise or fall
 * there with each of them.
 *
 * @param with the change for one unit of each name, in one order for a whole expression
 */
record Slope(Span value, List<Span> with) {

    /** What does not change with any of {@code names} names. */
    static Slope level(Span value, int names) {
        return new Slope(value, Collections.nCopies(names, Span.ZERO));
    }

    /** A name itself, the one at {@code place}. */
    static Slope of(Span value, int place, int names) {
        return new Slope(
                value,
                IntStream.range(0, names)
                        .mapToObj(other -> Span.of(other == place ? 1 : 0))
                        .toList());
    }

    Slope plus(Slope other) {
        return new Slope(value.plus(other.value), both(Span::plus, other));
    }

    Slope times(Slope other) {
        return new Slope(
                value.times(other.value),
                both((mine, others) -> mine.times(other.value).plus(others.times(value)), other));
    }

    Slope times(double factor) {
        return to(value.times(factor), Span.of(factor));
    }

    /** This made into {@code made}, which rises by {@code steepness} for one unit of this. */
    Slope to(Span made, Span steepness) {
        UnaryOperator<Span> chained = each -> each.times(steepness);
        return new Slope(made, with.stream().map(chained).toList());
    }

    /** The lesser of the two wherever in their ranges. */
    Slope least(Slope other) {
        if (value.high() <= other.value.low()) {
            return this;
        }
        if (other.value.high() <= value.low()) {
            return other;
        }
        return new Slope(value.least(other.value), both(Span::with, other));
    }

    private List<Span> both(BinaryOperator<Span> made, Slope other) {
        return IntStream.range(0, with.size())
                .mapToObj(i -> made.apply(with.get(i), other.with.get(i)))
                .toList();
    }
}
