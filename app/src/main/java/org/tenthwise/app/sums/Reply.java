package org.tenthwise.app.sums;

/** What comes back from a sum. */
public sealed interface Reply permits Answer, Problem {}
