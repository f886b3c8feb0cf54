package org.tenthwise.model.compute.expression;

import org.tenthwise.model.words.Message;

/**
 * What kind of thing a part of an expression is.
 *
 * @param lengths how many lengths are multiplied in it, less those it is divided by; 0 for a plain number or an angle
 * @param angle whether it is an angle, in degrees
 * @param standing how surely it is that
 */
public record Dimension(int lengths, boolean angle, Standing standing) {

    /** How surely a part is what its names make it. */
    public enum Standing {
        /** Made of names. */
        FIRM,
        /** Divided by a typed figure, or one divided by it, which may be a length itself. */
        LOOSE,
        /** Of typed figures alone: whatever the other side is. */
        ANY
    }

    public static final Dimension LENGTH = new Dimension(1, false, Standing.FIRM);
    public static final Dimension ANGLE = new Dimension(0, true, Standing.FIRM);
    public static final Dimension NUMBER = new Dimension(0, false, Standing.FIRM);
    static final Dimension ANY = new Dimension(0, false, Standing.ANY);

    boolean isAny() {
        return standing == Standing.ANY;
    }

    /** Whether it may count as {@code other} is. */
    boolean canBe(Dimension other) {
        return standing != Standing.FIRM || other.standing != Standing.FIRM || isLike(other);
    }

    /** Whether it is of the same kind, however surely. */
    public boolean isLike(Dimension other) {
        return lengths == other.lengths && angle == other.angle;
    }

    boolean isNumber() {
        return lengths == 0 && !angle;
    }

    /** In words: a length, an angle, a plain number. */
    public Message said() {
        if (angle) {
            return Message.of("model.dimension.angle");
        }
        return switch (lengths) {
            case 0 -> Message.of("model.dimension.number");
            case 1 -> Message.of("model.dimension.length");
            case 2 -> Message.of("model.dimension.area");
            default -> Message.of("model.dimension.none", lengths);
        };
    }
}
