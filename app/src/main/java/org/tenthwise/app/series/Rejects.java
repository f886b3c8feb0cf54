package org.tenthwise.app.series;

import java.util.Optional;

/**
 * How many of the parts were not as the drawing has them, and what that leaves open for parts to come.
 *
 * @param n parts that are shown to be in or out
 * @param rejects of them out, conceded, or out when they were measured before
 * @param unproven parts neither shown to be in nor to be out: counted nowhere
 * @param stillToCut parts that can still be cut: counted nowhere
 * @param rate absent where no part counts
 */
public record Rejects(int n, int rejects, int unproven, int stillToCut, Optional<Rate> rate) {

    /** Between what the share of rejects may well lie, from 0 to 1; the lower end is 0 where there is none. */
    public record Rate(double lower, double upper, AskedSum asked) {}
}
