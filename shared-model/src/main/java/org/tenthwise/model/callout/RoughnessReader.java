package org.tenthwise.model.callout;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    private final Tokens row;
    private final Unit ofDrawing;

    RoughnessReader(Tokens row, Unit ofDrawing) {
        this.row = row;
        this.ofDrawing = ofDrawing;
    }

    static boolean isNext(Tokens row) {
        boolean limits = row.peek().isWord("U", "L") && row.peek(1).isWord(NAMES);
        return row.peek().is('√') || row.peek().isWord(NAMES) || limits;
    }

    CalloutPart read() {
        row.accept('√');
        if (row.peek().isWord("U", "L")) {
            return limits();
        }
        CalloutKind kind = parameter();
        boolean most = row.accept("MAX").isPresent();
        boolean least = !most && row.accept("MIN").isPresent();
        BigDecimal value = value();
        if (!most && !least) {
            most = row.accept("MAX").isPresent();
            least = !most && row.accept("MIN").isPresent();
        }
        if (row.peek().is('-') || row.peek().is('/') || row.peek().isWord("TO")) {
            throw new Refused("model.callout.roughness-range");
        }
        return CalloutPart.of(
                kind, least ? CalloutSize.atLeast(value, ofDrawing) : CalloutSize.atMost(value, ofDrawing));
    }

    private CalloutPart limits() {
        boolean upperFirst = row.next().isWord("U");
        CalloutKind kind = parameter();
        BigDecimal one = value();
        if (row.accept(upperFirst ? "L" : "U").isEmpty()) {
            row.accept('/');
            row.acceptBreak();
            if (row.accept(upperFirst ? "L" : "U").isEmpty()) {
                CalloutSize only =
                        upperFirst ? CalloutSize.atMost(one, ofDrawing) : CalloutSize.atLeast(one, ofDrawing);
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
        return CalloutPart.of(kind, CalloutSize.between(Optional.empty(), lower, upper, ofDrawing));
    }

    private CalloutKind parameter() {
        if (row.peek().isWord(NAMES)) {
            return PARAMETERS.get(row.next().capitals());
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
        BigDecimal value = FigureReader.decimal(row.next());
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
