package org.tenthwise.model.callout;

import java.util.Optional;

/** The symbols that stand before a size, or the words for them, before or behind it. */
final class Symbols {

    static final String[] DIAMETERS = {"DIA", "DIAM", "DIAMETER"};
    static final String[] RADII = {"R", "RAD", "RADIUS", "SR", "CR"};
    static final String[] COUNTERBORES = {"C'BORE", "CBORE", "COUNTERBORE"};
    static final String[] COUNTERSINKS = {"C'SINK", "CSINK", "CSK", "COUNTERSINK"};
    static final String[] SPOTFACES = {"SF", "SPOTFACE", "S'FACE"};
    static final String[] DEPTHS = {"DEPTH", "DEEP", "DP"};
    static final String[] THROUGH = {"THRU", "THROUGH"};

    private Symbols() {}

    /** The symbol taken; absent where a figure stands by itself. */
    static Optional<CalloutKind> before(Tokens row) {
        boolean sphere = row.peek().isWord("S") && row.peek(1).is('⌀');
        if (sphere) {
            row.next();
        }
        if (row.accept('⌀') || row.accept(DIAMETERS).isPresent()) {
            return Optional.of(CalloutKind.DIAMETER);
        }
        if (row.accept(RADII).isPresent()) {
            return Optional.of(CalloutKind.RADIUS);
        }
        if (row.accept('□') || row.accept('▢') || row.accept("SQ", "SQUARE").isPresent()) {
            return Optional.of(CalloutKind.SQUARE);
        }
        if (row.accept('⌒')) {
            return Optional.of(CalloutKind.ARC);
        }
        if (row.accept('∠')) {
            return Optional.of(CalloutKind.ANGLE);
        }
        return row.accept('↧') || row.accept(DEPTHS).isPresent() ? Optional.of(CalloutKind.DEPTH) : Optional.empty();
    }

    /** The same behind a size. */
    static Optional<CalloutKind> behind(Tokens row) {
        if (row.accept(DIAMETERS).isPresent()) {
            return Optional.of(CalloutKind.DIAMETER);
        }
        if (row.accept("R", "RAD", "RADIUS").isPresent()) {
            return Optional.of(CalloutKind.RADIUS);
        }
        if (row.accept("SQ", "SQUARE").isPresent()) {
            return Optional.of(CalloutKind.SQUARE);
        }
        return row.accept(DEPTHS).map(deep -> CalloutKind.DEPTH);
    }

    static boolean isCounterbore(Tokens row) {
        return row.peek().is('⌴') || row.peek().isWord(COUNTERBORES);
    }

    static boolean isCountersink(Tokens row) {
        return row.peek().is('⌵') || row.peek().isWord(COUNTERSINKS);
    }

    /** By its letters, or by the sign of the counterbore with them. */
    static boolean isSpotface(Tokens row) {
        return row.peek().isWord(SPOTFACES) || row.peek().is('⌴') && row.peek(1).isWord(SPOTFACES);
    }

    static boolean isDepth(Tokens row) {
        return row.peek().is('↧') || row.peek().isWord(DEPTHS);
    }
}
