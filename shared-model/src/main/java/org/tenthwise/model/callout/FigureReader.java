package org.tenthwise.model.callout;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * Reads one figure: a decimal, a fraction on a drawing in inches, an angle with its marks, each with a unit behind it.
 */
final class FigureReader {

    private static final List<String> DENOMINATORS = List.of("2", "4", "8", "16", "32", "64", "128");
    private static final int PLACES_OF_A_FRACTION = 7;
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);
    private static final int MOST_DIGITS = 9;

    private final Tokens row;
    private final Unit ofDrawing;

    FigureReader(Tokens row, Unit ofDrawing) {
        this.row = row;
        this.ofDrawing = ofDrawing;
    }

    boolean isNext() {
        return row.peek().isFigure();
    }

    /**
     * The first figure of a size.
     *
     * @throws Refused if no figure stands here
     */
    CalloutFigure read() {
        return read(false);
    }

    /** A figure beside another; beside an angle, minutes and seconds may stand alone. */
    CalloutFigure readBeside(CalloutFigure first) {
        return read(first.isOfAngle());
    }

    private CalloutFigure read(boolean besideAngle) {
        if (!isNext()) {
            throw row.atEnd()
                    ? new Refused("model.callout.no-figure")
                    : new Refused("model.callout.no-figure-here", row.peek().text());
        }
        Optional<CalloutFigure> fraction = fraction();
        if (fraction.isPresent()) {
            return withUnit(fraction.get());
        }
        BigDecimal value = decimal(row.next());
        if (isDegree()) {
            return angle(value);
        }
        return row.peek().is('′') || besideAngle && row.peek().is('″')
                ? withoutDegrees(value, besideAngle)
                : withUnit(new CalloutFigure(value, Optional.empty(), false));
    }

    /** @throws Refused if it is no plain decimal */
    static BigDecimal decimal(Token token) {
        String text = token.text();
        if (text.indexOf('.') != text.lastIndexOf('.')) {
            throw new Refused("model.callout.two-points", text);
        }
        if (text.endsWith(".")) {
            throw new Refused("model.callout.point-without-places", text);
        }
        if (text.length() > 1 && text.charAt(0) == '0' && text.charAt(1) != '.') {
            throw new Refused("model.callout.leading-nought", text);
        }
        if (text.length() > MOST_DIGITS) {
            throw new Refused("model.callout.too-many-digits", text);
        }
        return new BigDecimal(text);
    }

    private boolean isDegree() {
        return row.peek().is('°') || row.peek().isWord("DEG", "DEGREE", "DEGREES");
    }

    /** Degrees are read; minutes and seconds may follow. */
    private CalloutFigure angle(BigDecimal degrees) {
        row.next();
        if (!row.peek().isFigure() || !row.peek(1).is('′')) {
            return new CalloutFigure(degrees, Optional.of(Unit.DEGREE), false);
        }
        BigDecimal minutes = whole(degrees).multiply(SIXTY).add(part(row.next()));
        row.next();
        if (!row.peek().isFigure() || !row.peek(1).is('″')) {
            return new CalloutFigure(minutes, Optional.of(Unit.MINUTE_OF_ARC), false);
        }
        BigDecimal seconds = whole(minutes).multiply(SIXTY).add(part(row.next()));
        row.next();
        return new CalloutFigure(seconds, Optional.of(Unit.SECOND_OF_ARC), false);
    }

    /** Decimals of a degree with minutes behind them say the same twice, or two things. */
    private static BigDecimal whole(BigDecimal figure) {
        if (figure.scale() > 0) {
            throw new Refused("model.callout.decimals-and-minutes");
        }
        return figure;
    }

    private static BigDecimal part(Token token) {
        String text = token.text();
        Token plain = text.matches("0\\d.*")
                ? new Token(token.type(), text.substring(1), token.start(), token.end(), false, false)
                : token;
        BigDecimal part = decimal(plain);
        if (part.compareTo(SIXTY) >= 0) {
            throw new Refused("model.callout.sixty-minutes", text);
        }
        return part;
    }

    private CalloutFigure withoutDegrees(BigDecimal value, boolean besideAngle) {
        if (!besideAngle) {
            throw new Refused("model.callout.minutes-alone", value.toPlainString());
        }
        if (row.next().is('″')) {
            return new CalloutFigure(value, Optional.of(Unit.SECOND_OF_ARC), false);
        }
        return new CalloutFigure(value, Optional.of(Unit.MINUTE_OF_ARC), false);
    }

    private CalloutFigure withUnit(CalloutFigure figure) {
        if (row.accept("MM").isPresent()) {
            return new CalloutFigure(figure.value(), Optional.of(Unit.MILLIMETRE), false);
        }
        if (row.accept('″')
                || !isInPlaces() && row.accept("IN", "INCH", "INCHES").isPresent()) {
            return new CalloutFigure(figure.value(), Optional.of(Unit.INCH), figure.isFraction());
        }
        return figure;
    }

    /** {@code R5 IN 3 PLACES}: no unit. */
    private boolean isInPlaces() {
        return row.peek().isWord("IN") && (row.peek(1).isFigure() || row.peek(1).isWord());
    }

    /** {@code 5/8}, {@code 1 1/2}, {@code 1-1/2}. */
    private Optional<CalloutFigure> fraction() {
        if (!row.peek().isWhole()) {
            return Optional.empty();
        }
        if (isFraction(0)) {
            return Optional.of(fraction(BigDecimal.ZERO));
        }
        boolean hyphen = row.peek(1).is('-')
                && !row.peek(1).blankBefore()
                && !row.peek(1).blankAfter();
        int behind = hyphen ? 2 : 1;
        if ((hyphen || row.peek().blankAfter()) && row.peek(behind).isWhole() && isFraction(behind)) {
            BigDecimal whole = decimal(row.next());
            row.skip(behind - 1);
            return Optional.of(fraction(whole));
        }
        return Optional.empty();
    }

    private boolean isFraction(int ahead) {
        Token over = row.peek(ahead);
        Token stroke = row.peek(ahead + 1);
        Token under = row.peek(ahead + 2);
        return stroke.is('/')
                && !stroke.blankBefore()
                && !stroke.blankAfter()
                && under.isWhole()
                && !row.peek(ahead + 3).is('°')
                && decimal(over).compareTo(decimal(under)) < 0;
    }

    private CalloutFigure fraction(BigDecimal whole) {
        Token over = row.next();
        row.next();
        Token under = row.next();
        String drawn = over.text() + "/" + under.text();
        boolean inches =
                ofDrawing == Unit.INCH || row.peek().is('″') || row.peek().isWord("IN", "INCH");
        if (!inches) {
            throw new Refused("model.callout.fraction-millimetres", drawn);
        }
        if (!DENOMINATORS.contains(under.text())) {
            throw new Refused("model.callout.fraction-or-limits", drawn);
        }
        BigDecimal part = new BigDecimal(over.text())
                .divide(new BigDecimal(under.text()), PLACES_OF_A_FRACTION, RoundingMode.UNNECESSARY)
                .stripTrailingZeros();
        return new CalloutFigure(whole.add(part), Optional.empty(), true);
    }
}
