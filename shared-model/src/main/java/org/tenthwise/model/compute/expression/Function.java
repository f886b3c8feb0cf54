package org.tenthwise.model.compute.expression;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What can stand before a bracket in an expression. Angles are in degrees. */
enum Function {
    SQRT,
    SIN,
    COS,
    TAN,
    ASIN,
    ACOS,
    ATAN,
    ABS,
    MIN,
    MAX,
    MEAN;

    static Optional<Function> of(String word) {
        return Arrays.stream(values())
                .filter(function -> function.word().equals(word))
                .findFirst();
    }

    static List<String> words() {
        return Arrays.stream(values()).map(Function::word).toList();
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether it takes one thing or more, and of a name alone the sizes at its places. */
    boolean ofSeveral() {
        return this == MIN || this == MAX || this == MEAN;
    }
}
