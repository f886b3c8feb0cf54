package org.tenthwise.model.callout;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * Reads a size: {@code N ±N}, {@code N +N/-N}, {@code N/N} the larger first, {@code N-N} the smaller first, {@code N
 * MAX}, {@code N MIN}, {@code N H7}, {@code N}. What leaves a doubt is refused.
 */
final class SizeReader {

    private static final String[] MOST = {"MAX", "MAXIMUM"};
    private static final String[] LEAST = {"MIN", "MINIMUM"};

    private final Tokens row;
    private final Unit ofDrawing;
    private final FigureReader figures;
    private Optional<CalloutKind> saidInside = Optional.empty();

    SizeReader(Tokens row, Unit ofDrawing) {
        this.row = row;
        this.ofDrawing = ofDrawing;
        this.figures = new FigureReader(row, ofDrawing);
    }

    /** Whether only a limit is given, said before the size: {@code MAX 3}, {@code ≤ 3}. */
    Optional<Bound> boundBefore() {
        return bound().or(() -> sign('≤', Bound.MOST)).or(() -> sign('≥', Bound.LEAST));
    }

    /** @param before what {@link #boundBefore} found */
    CalloutSize read(Optional<Bound> before) {
        if (row.peek().is('±') || row.peek().is('+') || row.peek().is('-')) {
            throw new Refused("model.callout.no-size", row.peek().text());
        }
        saidInside = Optional.empty();
        CalloutFigure first = figures.read();
        Optional<Bound> bound = before.or(this::bound);
        if (bound.isPresent()) {
            return oneSided(first, bound.get());
        }
        return tolerated(first);
    }

    private CalloutSize oneSided(CalloutFigure figure, Bound bound) {
        Unit unit = CalloutFigure.unitOf(List.of(figure), ofDrawing);
        return bound == Bound.MOST
                ? CalloutSize.atMost(figure.in(unit), unit)
                : CalloutSize.atLeast(figure.in(unit), unit);
    }

    private CalloutSize tolerated(CalloutFigure first) {
        saidInside = inside();
        if (row.accept('±')) {
            return plusMinus(first, figures.readBeside(first));
        }
        if (new DeviationReader(row, figures, ofDrawing).isNext(first)) {
            return new DeviationReader(row, figures, ofDrawing).read(first);
        }
        if (new LimitsReader(row, figures, ofDrawing).isNext()) {
            return new LimitsReader(row, figures, ofDrawing).read(first);
        }
        if (ZoneReader.isNext(row)) {
            return new ZoneReader(row, figures, ofDrawing).read(first);
        }
        if (figures.isNext() && !CalloutCount.isBehind(row)) {
            throw new Refused(
                    "model.callout.two-figures",
                    first.value().toPlainString(),
                    row.peek().text());
        }
        Unit unit = CalloutFigure.unitOf(List.of(first), ofDrawing);
        return CalloutSize.plain(first.in(unit), unit, first.isFraction());
    }

    /** What the size is of, where a word between it and its tolerance says so: {@code 20 DIA ±0.05}. */
    Optional<CalloutKind> saidInside() {
        return saidInside;
    }

    private Optional<CalloutKind> inside() {
        Token behind = row.peek(1);
        return behind.is('±') || behind.is('+') || behind.is('-') ? Symbols.behind(row) : Optional.empty();
    }

    private CalloutSize plusMinus(CalloutFigure first, CalloutFigure off) {
        if (row.peek().is('±') || row.peek().is('+')) {
            throw new Refused("model.callout.two-tolerances");
        }
        if (off.isZero()) {
            throw new Refused("model.callout.no-room");
        }
        Unit unit = CalloutFigure.unitOf(List.of(first, off), ofDrawing);
        BigDecimal nominal = first.in(unit);
        BigDecimal tolerance = off.in(unit);
        return CalloutSize.between(Optional.of(nominal), nominal.subtract(tolerance), nominal.add(tolerance), unit);
    }

    private Optional<Bound> bound() {
        if (row.accept(MOST).isPresent()) {
            return Optional.of(Bound.MOST);
        }
        return row.accept(LEAST).map(taken -> Bound.LEAST);
    }

    private Optional<Bound> sign(char sign, Bound bound) {
        return row.accept(sign) ? Optional.of(bound) : Optional.empty();
    }

    /** The only limit a size has. */
    enum Bound {
        MOST,
        LEAST
    }
}
