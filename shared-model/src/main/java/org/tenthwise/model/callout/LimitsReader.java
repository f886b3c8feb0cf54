package org.tenthwise.model.callout;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/** Reads the second of two limits: behind a stroke or below the first the smaller, behind a dash the larger. */
final class LimitsReader {

    private static final BigDecimal NEAR = new BigDecimal("0.9");

    private final Tokens row;
    private final FigureReader figures;
    private final Unit ofDrawing;

    LimitsReader(Tokens row, FigureReader figures, Unit ofDrawing) {
        this.row = row;
        this.figures = figures;
        this.ofDrawing = ofDrawing;
    }

    boolean isNext() {
        boolean below = row.peek().type() == Token.Type.BREAK
                && row.peek(1).isFigure()
                && !row.peek(2).isWord("X");
        return below || row.peek().is('/') || row.peek().is('-') || row.peek().isWord("TO");
    }

    /** Whole numbers over each other: on a drawing in inches always, in millimetres where they lie far apart. */
    private boolean isLikeAFraction(BigDecimal one, BigDecimal other) {
        return ofDrawing == Unit.INCH || other.compareTo(one.multiply(NEAR)) < 0;
    }

    /** {@code 1/4-20}, {@code 10-32} may be threads to the inch, {@code 32-36} a hardness without its scale. */
    private boolean isInDoubt(CalloutFigure first) {
        return ofDrawing.isOfLength()
                && !first.isOfAngle()
                && (ofDrawing == Unit.INCH || first.value().scale() <= 0);
    }

    /** @throws Refused if they are the wrong way round, are the same, or another size follows */
    CalloutSize read(CalloutFigure first) {
        Token between = row.next();
        boolean whole =
                between.is('/') && first.value().scale() <= 0 && row.peek().isWhole();
        if (!figures.isNext()) {
            throw new Refused("model.callout.two-sizes");
        }
        CalloutFigure second = figures.readBeside(first);
        if (row.peek().is('±') || row.peek().is('/') || row.peek().is('-')) {
            throw new Refused("model.callout.two-tolerances");
        }
        Unit unit = CalloutFigure.unitOf(List.of(first, second), ofDrawing);
        BigDecimal one = first.in(unit);
        BigDecimal other = second.in(unit);
        if (between.is('-') && second.value().scale() <= 0 && isInDoubt(first)) {
            throw new Refused("model.callout.dash-and-whole", one.toPlainString(), other.toPlainString());
        }
        boolean largerFirst = between.is('/') || between.type() == Token.Type.BREAK;
        if (whole && !first.isOfAngle() && isLikeAFraction(one, other)) {
            throw new Refused("model.callout.fraction-or-limits", one.toPlainString() + "/" + other.toPlainString());
        }
        int order = one.compareTo(other);
        if (order == 0) {
            throw new Refused("model.callout.no-room");
        }
        if (largerFirst != order > 0) {
            throw new Refused(
                    largerFirst ? "model.callout.larger-above" : "model.callout.smaller-first",
                    one.min(other).toPlainString(),
                    one.max(other).toPlainString());
        }
        return CalloutSize.between(Optional.empty(), one.min(other), one.max(other), unit);
    }
}
