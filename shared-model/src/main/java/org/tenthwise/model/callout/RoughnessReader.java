package org.tenthwise.model.callout;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.compute.roughness.AcceptanceRule;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * Reads a requirement of roughness: one value is the upper limit, two are written with U and L. In micrometres on a
 * drawing in millimetres, in microinches on one in inches. A value without its parameter is Ra on a drawing in inches.
 */
final class RoughnessReader {

    private static final Map<String, CalloutKind> PARAMETERS = Map.of(
            "RA", CalloutKind.ROUGHNESS_RA,
            "RZ", CalloutKind.ROUGHNESS_RZ,
            "RQ", CalloutKind.ROUGHNESS_RQ,
            "RT", CalloutKind.ROUGHNESS_RT);
    private static final String[] NAMES = {"RA", "RZ", "RQ", "RT"};

    private static final String[] MOST_OF = {"RAMAX", "RZMAX"};

    private final Tokens row;
    private final Unit ofDrawing;
    private boolean mostInName;

    RoughnessReader(Tokens row, Unit ofDrawing) {
        this.row = row;
        this.ofDrawing = ofDrawing;
    }

    static boolean isNext(Tokens row) {
        boolean limits = row.peek().isWord("U", "L") && row.peek(1).isWord(NAMES);
        return row.peek().is('√')
                || row.peek().isWord(NAMES)
                || row.peek().isWord(MOST_OF)
                || row.peek().isFigure() && row.peek(1).isWord(NAMES)
                || limits;
    }

    CalloutPart read() {
        row.accept('√');
        if (row.peek().isWord("U", "L")) {
            return limits();
        }
        if (row.peek().isFigure() && row.peek(1).isWord(NAMES)) {
            return behind();
        }
        CalloutKind kind = parameter();
        boolean named = !row.accept('≤') && row.accept("MAX").isPresent();
        boolean least = !named && row.accept("MIN").isPresent();
        BigDecimal value = value();
        return one(kind, value, named | mostInName, least);
    }

    /** {@code 0.8 Ra MAX}. */
    private CalloutPart behind() {
        Token figure = row.next();
        CalloutKind kind = parameter();
        return one(kind, value(figure), false, false);
    }

    /** Without a word the value is the upper limit, and the rule is that of the standard the drawing goes by. */
    private CalloutPart one(CalloutKind kind, BigDecimal value, boolean mostBefore, boolean leastBefore) {
        boolean said = mostBefore || leastBefore;
        boolean most = mostBefore || !said && row.accept("MAX").isPresent();
        boolean least = leastBefore || !said && !most && row.accept("MIN").isPresent();
        if (row.peek().is('-') || row.peek().is('/') || row.peek().isWord("TO")) {
            throw new Refused("model.callout.roughness-range");
        }
        boolean sixteen = !most && !least && isSixteenPercent();
        CalloutSize size = least ? CalloutSize.atLeast(value, unit()) : CalloutSize.atMost(value, unit());
        Optional<AcceptanceRule> rule = Optional.of(AcceptanceRule.MAX)
                .filter(by -> most)
                .or(() -> Optional.of(AcceptanceRule.SIXTEEN_PERCENT).filter(by -> sixteen));
        return CalloutPart.of(kind, size).by(rule);
    }

    private boolean isSixteenPercent() {
        boolean there = row.peek().isFigure()
                && row.peek().text().equals("16")
                && row.peek(1).is('%');
        row.skip(there ? 2 : 0);
        return there;
    }

    private Unit unit() {
        return Unit.named(ofDrawing == Unit.INCH ? "µin" : "µm");
    }

    private CalloutPart limits() {
        boolean upperFirst = row.next().isWord("U");
        CalloutKind kind = parameter();
        BigDecimal one = value();
        if (row.accept(upperFirst ? "L" : "U").isEmpty()) {
            row.accept('/');
            row.acceptBreak();
            if (row.accept(upperFirst ? "L" : "U").isEmpty()) {
                CalloutSize only = upperFirst ? CalloutSize.atMost(one, unit()) : CalloutSize.atLeast(one, unit());
                return CalloutPart.of(kind, only);
            }
        }
        if (parameter() != kind) {
            throw new Refused("model.callout.roughness-range");
        }
        BigDecimal other = value();
        BigDecimal upper = upperFirst ? one : other;
        BigDecimal lower = upperFirst ? other : one;
        if (upper.compareTo(lower) <= 0) {
            throw new Refused("model.callout.no-room");
        }
        return CalloutPart.of(kind, CalloutSize.between(Optional.empty(), lower, upper, unit()));
    }

    private CalloutKind parameter() {
        if (row.peek().isWord(NAMES)) {
            return PARAMETERS.get(row.next().capitals());
        }
        if (row.peek().isWord(MOST_OF)) {
            mostInName = true;
            return PARAMETERS.get(row.next().capitals().substring(0, 2));
        }
        if (ofDrawing == Unit.INCH && row.peek().isFigure()) {
            return CalloutKind.ROUGHNESS_RA;
        }
        throw new Refused("model.callout.roughness-parameter");
    }

    private BigDecimal value() {
        if (!row.peek().isFigure()) {
            throw new Refused("model.callout.roughness-value");
        }
        return value(row.next());
    }

    private BigDecimal value(Token figure) {
        BigDecimal value = FigureReader.decimal(figure);
        if (value.signum() == 0) {
            throw new Refused("model.callout.no-room");
        }
        List<String> own = ofDrawing == Unit.INCH ? List.of("µIN", "UIN", "MICROINCH") : List.of("µM", "UM");
        boolean written = row.peek().isWord() && own.contains(micro(row.peek()));
        if (written) {
            row.next();
        }
        return value;
    }

    /** In capitals, with the sign of a millionth as it is: its capital is another letter. */
    private static String micro(Token word) {
        return word.text().startsWith("µ") ? "µ" + word.capitals().substring(1) : word.capitals();
    }
}
