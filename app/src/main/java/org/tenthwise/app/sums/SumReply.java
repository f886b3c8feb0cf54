package org.tenthwise.app.sums;

import java.util.function.Function;

/** What comes back from a sum. */
public sealed interface SumReply permits SumResult, Problem {

    <T> T match(Function<SumResult, T> answered, Function<Problem, T> refused);
}
