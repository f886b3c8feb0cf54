package org.tenthwise.app.sums;

/** What comes back from a sum. */
public sealed interface SumReply permits SumResult, Problem {}
