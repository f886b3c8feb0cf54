package org.tenthwise.model.callout;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Origin;
import org.tenthwise.model.words.Refused;

/**
 * Reads sizes with their symbols, part by part: a hole with its depth, counterbore or countersink, a chamfer with its
 * angle, a thread with its depth. Parts follow each other through a symbol, an X with blanks, a comma or a line.
 */
final class PartReader {

    private static final String[] CHAMFERS = {"CHAM", "CHAMF", "CHAMFER", "CHF"};

    private final Tokens row;
    private final GeneralLimits general;
    private final Tail tail;
    private final SizeReader sizes;
    private final List<CalloutPart> parts = new ArrayList<>();

    PartReader(Tokens row, Unit ofDrawing, GeneralLimits general, Tail tail) {
        this.row = row;
        this.general = general;
        this.tail = tail;
        this.sizes = new SizeReader(row, ofDrawing);
    }

    List<CalloutPart> read() {
        one();
        tail.read();
        while (isMore()) {
            next();
            tail.read();
        }
        return parts;
    }

    /** Whether another part of the same hole follows. */
    private boolean isMore() {
        boolean parted = row.peek().is(',') || row.peek().is(';') || row.peek().type() == Token.Type.BREAK;
        return parted && row.peek(1).type() != Token.Type.END || isSymbolOfHole() || isTimes();
    }

    private boolean isSymbolOfHole() {
        return Symbols.isSpotface(row)
                || Symbols.isCounterbore(row)
                || Symbols.isCountersink(row)
                || Symbols.isDepth(row);
    }

    private boolean isTimes() {
        return row.peek().isWord("X", "BY");
    }

    private void next() {
        if (row.accept(',') || row.accept(';') || row.acceptBreak()) {
            row.acceptBreak();
        }
        if (isTimes()) {
            depthBehindTimes();
        } else {
            one();
        }
    }

    private void one() {
        if (Symbols.isSpotface(row)) {
            row.accept('⌴');
            row.accept(Symbols.SPOTFACES);
            sunk(CalloutKind.SPOTFACE);
        } else if (Symbols.isCounterbore(row)) {
            row.next();
            sunk(CalloutKind.COUNTERBORE);
        } else if (Symbols.isCountersink(row)) {
            row.next();
            countersink();
        } else if (ThreadReader.isNext(row)) {
            parts.add(new ThreadReader(row).read());
        } else {
            size();
        }
    }

    /** A bore of its own at the mouth of a hole, with its depth where that is said. */
    private void sunk(CalloutKind kind) {
        diameter();
        add(kind, sizes.read(sizes.boundBefore()));
        row.accept(Symbols.DIAMETERS);
        tail.read();
        if (isTimes()) {
            row.next();
            depth();
        }
    }

    /** Whether it is said that it is one. */
    private boolean depth() {
        boolean before = row.accept('↧') || row.accept(Symbols.DEPTHS).isPresent();
        CalloutSize depth = sizes.read(sizes.boundBefore());
        boolean behind = !before && row.accept(Symbols.DEPTHS).isPresent();
        if (depth.isOfAngle()) {
            throw new Refused("model.callout.angle-of-no-chamfer");
        }
        add(CalloutKind.DEPTH, depth);
        return before || behind;
    }

    /** Diameter and angle, or the other way round. */
    private void countersink() {
        boolean diameterFirst = diameter();
        CalloutSize first = sizes.read(sizes.boundBefore());
        row.accept(Symbols.DIAMETERS);
        addCountersink(first, diameterFirst);
        if (isTimes()) {
            row.next();
            boolean diameter = diameter();
            CalloutSize second = sizes.read(sizes.boundBefore());
            row.accept(Symbols.DIAMETERS);
            if (second.isOfAngle() == first.isOfAngle()) {
                throw new Refused("model.callout.two-sizes");
            }
            addCountersink(second, diameter);
        }
    }

    private void addCountersink(CalloutSize size, boolean diameter) {
        if (diameter && size.isOfAngle()) {
            throw new Refused("model.callout.diameter-of-angle");
        }
        add(size.isOfAngle() ? CalloutKind.COUNTERSINK_ANGLE : CalloutKind.COUNTERSINK, size);
    }

    private boolean diameter() {
        return row.accept('⌀') || row.accept(Symbols.DIAMETERS).isPresent();
    }

    private void size() {
        boolean chamfer = row.accept(CHAMFERS).isPresent();
        boolean basic = row.accept("BSC", "BASIC").isPresent();
        boolean reference = !basic && row.accept("REF").isPresent();
        Optional<SizeReader.Bound> bound = sizes.boundBefore();
        Optional<CalloutKind> before = Symbols.before(row);
        bound = bound.or(sizes::boundBefore);
        requireFigure(before);
        CalloutSize size = sizes.read(bound);
        if (sizes.saidInside()
                .filter(inside -> before.filter(first -> first != inside).isPresent())
                .isPresent()) {
            throw new Refused("model.callout.two-signs");
        }
        Optional<CalloutKind> kind = before.or(sizes::saidInside).or(() -> Symbols.behind(row));
        tail.read();
        if (basic || tail.takeBasic()) {
            addWithoutLimits(size.isOfAngle() ? CalloutKind.BASIC_ANGLE : CalloutKind.BASIC, size);
        } else if (reference || tail.takeReference()) {
            addWithoutLimits(CalloutKind.REFERENCE, size);
        } else if (kind.isEmpty() && isTimes() && (row.peek().blankAfter() || isFigureAhead())) {
            chamfer(size);
        } else if (chamfer) {
            add(CalloutKind.CHAMFER, size);
        } else {
            add(kind.orElse(size.isOfAngle() ? CalloutKind.ANGLE : CalloutKind.LINEAR), size);
        }
    }

    /** {@code 1.5X45°}: with a point before the X it is no count. */
    private boolean isFigureAhead() {
        return row.peek(1).isFigure();
    }

    private void requireFigure(Optional<CalloutKind> before) {
        if (row.atEnd() && before.isPresent()) {
            throw new Refused("model.callout.symbol-alone");
        }
    }

    private void chamfer(CalloutSize first) {
        row.next();
        if (!row.peek().isFigure()) {
            throw new Refused("model.callout.by-what", row.peek().text());
        }
        CalloutSize second = sizes.read(Optional.empty());
        if (row.peek().isWord(Symbols.DEPTHS)) {
            throw new Refused("model.callout.by-what", row.peek().text());
        }
        if (second.hasOneLimit() && !first.hasLimits()) {
            throw new Refused("model.callout.bound-of-which");
        }
        if (first.isOfAngle() && second.isOfAngle()) {
            throw new Refused("model.callout.two-sizes");
        }
        if (!first.isOfAngle() && !second.isOfAngle()) {
            requireLeg(second);
            requireLegs(first, second);
            add(CalloutKind.CHAMFER, first);
            add(CalloutKind.CHAMFER, second);
        } else {
            CalloutSize leg = first.isOfAngle() ? second : first;
            Stream.of(first, second)
                    .forEach(size -> parts.add(
                            size.isOfAngle()
                                    ? part(CalloutKind.CHAMFER_ANGLE, general.onAngle(size, leg))
                                    : limited(CalloutKind.CHAMFER, size)));
        }
        row.accept(CHAMFERS);
    }

    /** {@code 1 X 45}: the mark of an angle may be lost. */
    private static void requireLeg(CalloutSize size) {
        boolean likeAnAngle = !size.hasLimits()
                && size.nominal()
                        .filter(figure -> List.of("15", "30", "45", "60").contains(figure.toPlainString()))
                        .isPresent();
        if (likeAnAngle) {
            throw new Refused(
                    "model.callout.degree-lost", size.nominal().orElseThrow().toPlainString());
        }
    }

    /**
     * {@code 4 X 25 ±0.1} may be four places, {@code 12 X 8} a slot: no general tolerance of a chamfer goes to them.
     */
    private static void requireLegs(CalloutSize first, CalloutSize second) {
        if (!first.hasLimits() || !second.hasLimits()) {
            throw new Refused("model.callout.by-without-limits");
        }
    }

    /** {@code Ø8 ±0.1 X 12 DEEP}: without its word, what is behind the X could be anything. */
    private void depthBehindTimes() {
        CalloutKind last = parts.get(parts.size() - 1).kind();
        row.next();
        String drawn = row.peek().text();
        if (!depth() || last != CalloutKind.DIAMETER && last != CalloutKind.THREAD) {
            throw new Refused("model.callout.by-what", drawn);
        }
    }

    private void addWithoutLimits(CalloutKind kind, CalloutSize size) {
        if (size.hasLimits()) {
            throw new Refused(
                    kind == CalloutKind.REFERENCE
                            ? "model.callout.reference-with-limits"
                            : "model.callout.basic-with-limits");
        }
        parts.add(part(kind, size));
    }

    private void add(CalloutKind kind, CalloutSize size) {
        boolean ofAngle = kind.isOfAngle();
        if (ofAngle != size.isOfAngle()) {
            throw new Refused(ofAngle ? "model.callout.angle-without-mark" : "model.callout.diameter-of-angle");
        }
        parts.add(limited(kind, size));
    }

    private CalloutPart limited(CalloutKind kind, CalloutSize size) {
        if (size.origin().isPresent() && (kind == CalloutKind.RADIUS || kind == CalloutKind.CHAMFER)) {
            throw new Refused("model.callout.zone-of-radius");
        }
        requireNear(kind, size);
        CalloutSize limited = general.on(kind, size);
        requireRoom(kind, limited);
        return part(kind, limited);
    }

    /**
     * Two limits of one size lie near each other; one twice the other is of a thread, or two things: common practice.
     */
    private static void requireNear(CalloutKind kind, CalloutSize size) {
        boolean twoLimits = size.nominal().isEmpty()
                && size.lower().isPresent()
                && size.upper().isPresent();
        if (twoLimits && kind != CalloutKind.RADIUS && kind != CalloutKind.CHAMFER) {
            BigDecimal lower = size.lower().get();
            BigDecimal upper = size.upper().get();
            if (upper.compareTo(lower.add(lower)) > 0) {
                throw new Refused("model.callout.limits-far-apart", lower.toPlainString(), upper.toPlainString());
            }
        }
    }

    private static void requireRoom(CalloutKind kind, CalloutSize size) {
        boolean below = size.lower().filter(lower -> lower.signum() < 0).isPresent();
        if (below && !kind.isOfAngle()) {
            throw new Refused(
                    "model.callout.below-nought", size.lower().orElseThrow().toPlainString());
        }
        boolean all = size.lower().filter(lower -> lower.signum() == 0).isPresent() && isPlainSize(kind);
        if (all) {
            throw new Refused("model.callout.tolerance-as-size");
        }
        boolean nothing = size.upper().filter(upper -> upper.signum() <= 0).isPresent();
        if (nothing) {
            throw new Refused("model.callout.no-room");
        }
    }

    private static boolean isPlainSize(CalloutKind kind) {
        return kind == CalloutKind.LINEAR || kind == CalloutKind.DIAMETER || kind == CalloutKind.SQUARE;
    }

    private static CalloutPart part(CalloutKind kind, CalloutSize size) {
        return CalloutPart.of(kind, size)
                .from(size.origin()
                        .map(origin ->
                                kind == CalloutKind.DIAMETER && size.zone().isPresent() ? withSign(origin) : origin));
    }

    private static Origin withSign(Origin origin) {
        return new Origin("Ø" + origin.designation(), origin.standard());
    }
}
