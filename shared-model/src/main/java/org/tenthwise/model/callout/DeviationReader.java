package org.tenthwise.model.callout;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * Reads the two deviations behind a size, the upper one first; the lower one first only where it can be nothing else.
 */
final class DeviationReader {

    private final Tokens row;
    private final FigureReader figures;
    private final Unit ofDrawing;

    DeviationReader(Tokens row, FigureReader figures, Unit ofDrawing) {
        this.row = row;
        this.figures = figures;
        this.ofDrawing = ofDrawing;
    }

    /**
     * A deviation of a size.
     *
     * @param sign above zero for +, below for -, zero for a nought without a sign
     */
    private record Deviation(CalloutFigure figure, int sign) {

        BigDecimal in(Unit unit) {
            return sign < 0 ? figure.in(unit).negate() : figure.in(unit);
        }
    }

    /** Whether deviations follow. A dash before a figure no less than the size is one between limits. */
    boolean isNext(CalloutFigure size) {
        int from = row.peek().type() == Token.Type.BREAK ? 1 : 0;
        Token sign = row.peek(from);
        if (sign.is('+')) {
            return true;
        }
        if (sign.is('-') && row.peek(from + 1).isFigure()) {
            return from == 1 || !isDashBetweenLimits(size);
        }
        return isNought(sign) && (row.peek(from + 1).is('/') || isSign(from + 1) || isSign(from + 2));
    }

    private boolean isDashBetweenLimits(CalloutFigure size) {
        Token dash = row.peek();
        boolean likeASign = dash.blankBefore() && !dash.blankAfter();
        BigDecimal next = FigureReader.decimal(row.peek(1));
        return !likeASign && next.compareTo(size.value()) >= 0 || isLargerFirst(dash, next, size);
    }

    /** {@code 12.5-12.3}: near the size and with no second deviation, so that it looks like limits. */
    private boolean isLargerFirst(Token dash, BigDecimal next, CalloutFigure size) {
        boolean single = !row.peek(2).is('/') && !isSign(2) && !isNought(row.peek(2));
        return single
                && dash.blankBefore() == dash.blankAfter()
                && next.multiply(BigDecimal.valueOf(2)).compareTo(size.value()) > 0;
    }

    private boolean isSign(int ahead) {
        return row.peek(ahead).is('+') || row.peek(ahead).is('-');
    }

    private static boolean isNought(Token token) {
        return token.isFigure()
                && token.text().matches("0?(\\.0+)?")
                && !token.text().isEmpty();
    }

    /** @throws Refused if there is one only, they are the wrong way round, or leave no room */
    CalloutSize read(CalloutFigure first) {
        row.acceptBreak();
        Deviation one = deviation(first);
        boolean apart = row.accept('/') | row.acceptBreak();
        if (!apart && !isSign(0) && !isNought(row.peek())) {
            throw new Refused("model.callout.one-deviation", first.value().toPlainString());
        }
        Deviation other = deviation(first);
        Unit unit = CalloutFigure.unitOf(List.of(first, one.figure(), other.figure()), ofDrawing);
        return limits(first.in(unit), one, other, unit);
    }

    private static CalloutSize limits(BigDecimal nominal, Deviation one, Deviation other, Unit unit) {
        BigDecimal first = one.in(unit);
        BigDecimal second = other.in(unit);
        int order = first.compareTo(second);
        if (order == 0) {
            throw new Refused("model.callout.no-room");
        }
        if (order < 0 && first.signum() == second.signum()) {
            throw new Refused("model.callout.deviations-swapped");
        }
        return CalloutSize.between(
                Optional.of(nominal), nominal.add(first.min(second)), nominal.add(first.max(second)), unit);
    }

    private Deviation deviation(CalloutFigure size) {
        int sign = row.accept('+') ? 1 : row.accept('-') ? -1 : 0;
        CalloutFigure figure = figures.readBeside(size);
        if (sign == 0 && !figure.isZero()) {
            throw new Refused("model.callout.deviation-sign", figure.value().toPlainString());
        }
        return new Deviation(figure, sign);
    }
}
