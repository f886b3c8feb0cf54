package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.words.Word;

/**
 * What a plain size is of: how it is cut, and on which side of it the metal lies, so on which side a wrong one can
 * still be cut.
 *
 * @param key the word of the plan for it: one of those that are known, or one of its own
 * @param side absent where nobody can tell on which side metal is left: such a size is never cut again
 */
public record Feature(String key, Form form, Optional<Side> side) {

    public static final Feature BORE = new Feature("bore", Form.TURNED, Side.INSIDE);
    public static final Feature WIDTH = new Feature("width", Form.FACES, Side.INSIDE);
    public static final Feature DIAMETER = new Feature("diameter", Form.TURNED, Side.OUTSIDE);
    public static final Feature DEPTH = new Feature("depth", Form.LENGTH, Side.INSIDE);
    /** To a face that may lie either way: whether metal is left above its limits or below them, the plan must say. */
    public static final Feature LENGTH = new Feature("length", Form.LENGTH);

    /** Those that are a kind of check by themselves. */
    public static final List<Feature> PLAIN = List.of(BORE, WIDTH, DIAMETER, DEPTH);

    /** Those whose word alone says what they are. */
    public static final List<Feature> KNOWN = Stream.concat(
                    PLAIN.stream(),
                    Stream.of(
                            new Feature("counterbore", Form.TURNED, Side.INSIDE),
                            new Feature("spigot", Form.TURNED, Side.OUTSIDE),
                            new Feature("hole", Form.HOLE, Side.INSIDE),
                            new Feature("pin", Form.HOLE, Side.OUTSIDE),
                            new Feature("groove", Form.FACES, Side.INSIDE),
                            new Feature("slot", Form.FACES, Side.INSIDE),
                            new Feature("keyway", Form.FACES, Side.INSIDE),
                            new Feature("thickness", Form.FACES, Side.OUTSIDE),
                            new Feature("flats", Form.FACES, Side.OUTSIDE),
                            LENGTH,
                            new Feature("step", Form.LENGTH),
                            new Feature("chamfer", Form.CHAMFER),
                            new Feature("radius", Form.RADIUS)))
            .toList();

    /** How a feature lies to the tool that cuts it. */
    public enum Form {
        /** Round the axis: cut by what the register counts across it. */
        TURNED(true),
        /** Round, off the axis: a hole, a pin. */
        HOLE(true),
        /** Between two faces that look at each other, or away from each other. */
        FACES(true),
        /** Along a line to one face: to a shoulder, to a floor. */
        LENGTH(false),
        /** The leg of a chamfer. */
        CHAMFER(false),
        /** Of a fillet, of a rounded edge. */
        RADIUS(false);

        private final boolean hasTwoSides;

        Form(boolean hasTwoSides) {
            this.hasTwoSides = hasTwoSides;
        }

        /** Whether it lies between two walls: then it is either inside or outside, for metal is on one side of them. */
        public boolean hasTwoSides() {
            return hasTwoSides;
        }

        /**
         * Whether it is of an edge or a corner, where larger means less metal at the one and more at the other: nobody
         * says inside or outside of it.
         */
        public boolean isOfAnEdge() {
            return this == CHAMFER || this == RADIUS;
        }

        /** How plan files name it. */
        public String key() {
            return Word.of(this);
        }
    }

    /** Where metal lies, seen from a feature. */
    public enum Side {
        /** Metal is around it, and cutting makes it larger. */
        INSIDE(Limit.LOWER),
        /** It is of metal, and cutting makes it smaller. */
        OUTSIDE(Limit.UPPER);

        private final Limit stillCutBeyond;

        Side(Limit stillCutBeyond) {
            this.stillCutBeyond = stillCutBeyond;
        }

        /** The limit beyond which there is metal left to take off. */
        public Limit stillCutBeyond() {
            return stillCutBeyond;
        }

        /** How plan files name it. */
        public String key() {
            return Word.of(this);
        }
    }

    private Feature(String key, Form form, Side side) {
        this(key, form, Optional.of(side));
    }

    private Feature(String key, Form form) {
        this(key, form, Optional.empty());
    }

    /** One that has two sides lies inside or outside. */
    public Feature {
        if (side.isEmpty() && form.hasTwoSides()) {
            throw new IllegalArgumentException("%s has two sides: inside or outside".formatted(key));
        }
    }

    /** The one whose word says all of it. */
    public static Optional<Feature> known(String key) {
        return KNOWN.stream().filter(feature -> feature.key().equals(key)).findFirst();
    }

    /** Whether it is a kind of check by itself. */
    public boolean isPlain() {
        return PLAIN.contains(this);
    }

    /** Whether it goes round the axis, and is cut by what the register counts across it. */
    public boolean isTurned() {
        return form == Form.TURNED;
    }

    /** Whether it is a diameter. */
    public boolean isRound() {
        return isTurned() || form == Form.HOLE;
    }

    public boolean isInside() {
        return side.filter(Side.INSIDE::equals).isPresent();
    }

    public boolean isOutside() {
        return side.filter(Side.OUTSIDE::equals).isPresent();
    }

    /** How deep the tool goes in for what comes off the size: half of it on two sides, all of it on one face. */
    public Length depthOfCut(Length comesOff) {
        return form.hasTwoSides() ? comesOff.half() : comesOff;
    }

    /** Whether what comes off the size is a shallower cut than the tool can take; never where no least is known. */
    public boolean isTooLittle(Length comesOff, Optional<Length> leastCut) {
        return leastCut.filter(depthOfCut(comesOff)::isBelow).isPresent();
    }

    /**
     * The limit beyond which there is metal left to take off: lower for a bore, upper for an outside diameter.
     *
     * @throws java.util.NoSuchElementException of one whose side is not known: it is never cut again
     */
    public Limit stillCutBeyond() {
        return side.orElseThrow().stillCutBeyond();
    }
}
