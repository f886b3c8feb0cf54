package org.tenthwise.app.series;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * Which way sizes go since the last break.
 *
 * @param n how many parts it rests on
 * @param line absent where none is drawn
 * @param missed chance that a steady drift of three standard deviations over these parts was missed; absent but where
 *     none is shown
 * @param measureBefore number of the part before which to measure again, counted from 1 at the first part of the
 *     segment; always one that is still to come. Absent where nothing goes to a limit, and where that is too uncertain
 * @param uncertain whether the drift is shown but too barely to name a part
 * @param asked absent where too few parts or too coarse figures let nothing be asked
 */
public record Drift(
        Shown shown,
        int n,
        Optional<SlopeLine> line,
        Optional<Double> missed,
        Optional<Integer> measureBefore,
        boolean uncertain,
        Optional<AskedSum> asked) {

    /** What is shown. */
    public enum Shown {
        /** Too few parts for any line. */
        TOO_FEW,
        /** Too few different figures: the gauge shows its steps, not the parts. */
        COARSE,
        /** Every part is alike to the last figure. */
        LEVEL,
        /** The interval of the slope has zero in it: that is not the same as no drift. */
        NOT_SHOWN,
        /** It has not. */
        SHOWN
    }

    /**
     * The line through the points.
     *
     * @param slope a part
     * @param low of its interval
     * @param high of its interval
     * @param start size at part 0
     */
    public record SlopeLine(BigDecimal slope, double low, double high, BigDecimal start) {}

    static Drift none(Shown shown, int n) {
        return new Drift(shown, n, Optional.empty(), Optional.empty(), Optional.empty(), false, Optional.empty());
    }
}
