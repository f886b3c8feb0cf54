package org.tenthwise.model.callout;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.zone.ToleranceZone;
import org.tenthwise.model.compute.zone.ZoneLimits;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Origin;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/** Reads a tolerance class of ISO 286 behind a size; figures in brackets behind it must be those of the class. */
final class ZoneReader {

    private static final Message STANDARD = Message.of("as-said", "ISO 286-2");
    private static final int MOST_LETTERS = 2;
    private static final String[] NO_LETTERS = {"X", "R", "BY", "PL", "DP", "CF", "SQ", "EQ", "TO"};

    private final Tokens row;
    private final FigureReader figures;
    private final Unit ofDrawing;

    ZoneReader(Tokens row, FigureReader figures, Unit ofDrawing) {
        this.row = row;
        this.figures = figures;
        this.ofDrawing = ofDrawing;
    }

    /** One or two letters that are no word of a callout. */
    static boolean isNext(Tokens row) {
        Token word = row.peek();
        boolean graded = row.peek(1).isWhole() && !word.blankAfter();
        return word.isWord()
                && word.text().length() <= MOST_LETTERS
                && (graded && !isTimes(word) || !graded && !word.isWord(NO_LETTERS));
    }

    /** Right behind a figure it is a sign of times. */
    private static boolean isTimes(Token word) {
        return word.isWord("X") && !word.blankBefore();
    }

    /** @throws Refused if the standard has no such class at that size, or what stands beside it disagrees */
    CalloutSize read(CalloutFigure size) {
        Unit unit = CalloutFigure.unitOf(List.of(size), ofDrawing);
        Token letters = row.next();
        if (!row.peek().isWhole() || letters.blankAfter()) {
            throw new Refused("model.callout.zone-without-grade", letters.text());
        }
        String name = letters.text() + row.next().text();
        if (row.peek().is('/')) {
            throw new Refused("model.callout.fit", name);
        }
        if (unit.isOfAngle()) {
            throw new Refused("model.callout.zone-of-radius");
        }
        if (isExponent(letters, name)) {
            throw new Refused("model.callout.exponent", size.value().toPlainString() + name);
        }
        if (unit != Unit.MILLIMETRE) {
            throw new Refused("model.callout.zone-inch", name);
        }
        ToleranceZone zone = ToleranceZone.read(name);
        BigDecimal nominal = size.in(unit);
        ZoneLimits limits = zone.of(Length.of(nominal, unit));
        beside(size, zone, limits);
        Origin origin = new Origin("%s %s".formatted(nominal.toPlainString(), zone), STANDARD);
        return new CalloutSize(
                Optional.of(nominal),
                Optional.of(plain(limits.least())),
                Optional.of(plain(limits.greatest())),
                unit,
                false,
                Optional.of(origin),
                Optional.of(zone));
    }

    /** {@code 1e3}: a number of a spreadsheet more likely than a grade that fine. */
    private static boolean isExponent(Token letters, String name) {
        return !letters.blankBefore() && name.matches("[eE][0-4]\\d?");
    }

    private void beside(CalloutFigure size, ToleranceZone zone, ZoneLimits limits) {
        boolean bracket = row.peek().is('(') && !CalloutCount.isInBrackets(row);
        if (bracket) {
            row.next();
        }
        DeviationReader deviations = new DeviationReader(row, figures, ofDrawing);
        if (bracket || deviations.isNext(size) || row.peek().is('±')) {
            CalloutSize written = written(size, deviations);
            if (bracket && !row.accept(')')) {
                throw new Refused("model.callout.bracket-open");
            }
            requireSame(zone, limits, written);
        }
    }

    private CalloutSize written(CalloutFigure size, DeviationReader deviations) {
        if (row.accept('±')) {
            BigDecimal off = figures.read().value();
            return CalloutSize.between(
                    Optional.empty(), size.value().subtract(off), size.value().add(off), ofDrawing);
        }
        return deviations.isNext(size)
                ? deviations.read(size)
                : new LimitsReader(row, figures, ofDrawing).read(figures.read());
    }

    private static void requireSame(ToleranceZone zone, ZoneLimits limits, CalloutSize written) {
        BigDecimal least = plain(limits.least());
        BigDecimal greatest = plain(limits.greatest());
        boolean same = written.lower().orElseThrow().compareTo(least) == 0
                && written.upper().orElseThrow().compareTo(greatest) == 0;
        if (!same) {
            throw new Refused("model.callout.zone-disagrees", zone, least.toPlainString(), greatest.toPlainString());
        }
    }

    private static BigDecimal plain(Length limit) {
        BigDecimal figure = limit.in(Unit.MILLIMETRE);
        return figure.scale() < 0 ? figure.setScale(0) : figure;
    }
}
