package org.tenthwise.model.compute.expression;

import java.math.BigDecimal;
import java.util.List;

/**
 * What an expression is worked out in: exact figures, ranges with their slopes, or what kind of thing comes out.
 *
 * <p>Whatever has no answer throws {@link Undefined}.
 */
interface Arithmetic<T> {

    T figure(BigDecimal value);

    T pi();

    T negated(T of);

    T plus(T left, T right);

    T minus(T left, T right);

    T times(T left, T right);

    T over(T left, T right);

    /** @param exponent 2 or more */
    T power(T of, int exponent);

    /** @param function one that takes one thing */
    T of(Function function, T value);

    /** @param function one that takes several */
    T of(Function function, List<T> values);
}
