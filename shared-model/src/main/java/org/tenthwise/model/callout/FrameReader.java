package org.tenthwise.model.callout;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.MaterialModifier;
import org.tenthwise.model.words.Refused;

/**
 * Reads a frame of a geometrical tolerance: symbol, zone, modifiers, datums, upright strokes between them or none. What
 * is measured lies between nought and the zone. A frame that leaves the shape of the zone open, or its datum, is
 * refused.
 */
final class FrameReader {

    private static final Map<Character, CalloutKind> SIGNS = Map.ofEntries(
            Map.entry('⏤', CalloutKind.STRAIGHTNESS),
            Map.entry('⏥', CalloutKind.FLATNESS),
            Map.entry('▱', CalloutKind.FLATNESS),
            Map.entry('○', CalloutKind.CIRCULARITY),
            Map.entry('◯', CalloutKind.CIRCULARITY),
            Map.entry('⌭', CalloutKind.CYLINDRICITY),
            Map.entry('⌒', CalloutKind.PROFILE_LINE),
            Map.entry('⌓', CalloutKind.PROFILE_SURFACE),
            Map.entry('∠', CalloutKind.ANGULARITY),
            Map.entry('⟂', CalloutKind.PERPENDICULARITY),
            Map.entry('∥', CalloutKind.PARALLELISM),
            Map.entry('⌖', CalloutKind.POSITION),
            Map.entry('⊕', CalloutKind.POSITION),
            Map.entry('◎', CalloutKind.CONCENTRICITY),
            Map.entry('⌯', CalloutKind.SYMMETRY),
            Map.entry('↗', CalloutKind.CIRCULAR_RUNOUT),
            Map.entry('⌰', CalloutKind.TOTAL_RUNOUT),
            Map.entry('⇗', CalloutKind.TOTAL_RUNOUT));
    private static final Map<String, CalloutKind> WORDS = Map.ofEntries(
            Map.entry("STRAIGHTNESS", CalloutKind.STRAIGHTNESS),
            Map.entry("FLATNESS", CalloutKind.FLATNESS),
            Map.entry("CIRCULARITY", CalloutKind.CIRCULARITY),
            Map.entry("ROUNDNESS", CalloutKind.CIRCULARITY),
            Map.entry("CYLINDRICITY", CalloutKind.CYLINDRICITY),
            Map.entry("ANGULARITY", CalloutKind.ANGULARITY),
            Map.entry("PERPENDICULARITY", CalloutKind.PERPENDICULARITY),
            Map.entry("PARALLELISM", CalloutKind.PARALLELISM),
            Map.entry("POSITION", CalloutKind.POSITION),
            Map.entry("CONCENTRICITY", CalloutKind.CONCENTRICITY),
            Map.entry("COAXIALITY", CalloutKind.CONCENTRICITY),
            Map.entry("SYMMETRY", CalloutKind.SYMMETRY));
    private static final Set<CalloutKind> FORM = EnumSet.of(
            CalloutKind.STRAIGHTNESS, CalloutKind.FLATNESS, CalloutKind.CIRCULARITY, CalloutKind.CYLINDRICITY);
    private static final Set<CalloutKind> ROUND = EnumSet.of(
            CalloutKind.STRAIGHTNESS,
            CalloutKind.ANGULARITY,
            CalloutKind.PERPENDICULARITY,
            CalloutKind.PARALLELISM,
            CalloutKind.POSITION,
            CalloutKind.CONCENTRICITY);
    private static final Set<CalloutKind> PROFILES = EnumSet.of(CalloutKind.PROFILE_LINE, CalloutKind.PROFILE_SURFACE);
    private static final String MODIFIERS = "ⓂⓁⓈⒻⓉⓊⒺ";
    private static final int MOST_DATUMS = 3;
    private static final BigDecimal LARGEST_ZONE = BigDecimal.ONE;

    /** What changes the zone of ISO 1101 and ISO 5458, and looks like a datum of two letters. */
    private static final String[] OF_A_ZONE = {
        "CZ", "SZ", "UZ", "OZ", "VA", "CF", "UF", "ST", "NC", "LD", "MD", "PD", "LE", "CT", "DF", "CE"
    };

    private final Tokens row;
    private final Unit ofDrawing;
    private final FigureReader figures;
    private final List<String> datums = new ArrayList<>();
    private MaterialModifier material = MaterialModifier.NONE;
    private boolean plain = true;

    FrameReader(Tokens row, Unit ofDrawing) {
        this.row = row;
        this.ofDrawing = ofDrawing;
        this.figures = new FigureReader(row, ofDrawing);
    }

    /**
     * Whether a frame begins here. An angle and the length of an arc have the sign of one, but a mark or a tolerance.
     */
    static boolean isNext(Tokens row) {
        Token sign = row.peek();
        if (sign.is('∠')) {
            return row.rest().stream().noneMatch(token -> token.is('°') || token.is('′') || token.isWord("DEG"));
        }
        if (sign.is('⌒')) {
            return row.rest().stream().noneMatch(token -> token.is('±') || token.is('+') || token.is('-'));
        }
        return sign.type() == Token.Type.SIGN && SIGNS.containsKey(sign.text().charAt(0))
                || sign.isWord() && WORDS.containsKey(sign.capitals())
                || sign.isWord("CIRCULAR", "TOTAL") && (row.peek(1).isWord("RUNOUT") || isRunOut(row, 1))
                || sign.isWord("TRUE") && row.peek(1).isWord("POSITION");
    }

    /** {@code RUN-OUT}. */
    private static boolean isRunOut(Tokens row, int ahead) {
        return row.peek(ahead).isWord("RUN")
                && row.peek(ahead + 1).is('-')
                && row.peek(ahead + 2).isWord("OUT");
    }

    CalloutPart read() {
        CalloutKind kind = kind();
        row.accept('|');
        boolean round = row.accept('⌀');
        CalloutFigure zone = figures.read();
        modifiers();
        MaterialModifier modifier = material;
        boolean stroke = row.peek().is('|');
        requireNoLetterOfAModifier(stroke);
        datums();
        row.accept('|');
        judge(kind, round, datums.size());
        Unit unit = CalloutFigure.unitOf(List.of(zone), ofDrawing);
        if (unit.isOfAngle()) {
            throw new Refused("model.callout.frame-angle");
        }
        if (zone.isZero() && modifier == MaterialModifier.NONE) {
            throw new Refused("model.callout.frame-nought");
        }
        if (kind == CalloutKind.PROFILE_LINE && datums.isEmpty() && zone.value().compareTo(LARGEST_ZONE) > 0) {
            throw new Refused("model.callout.arc-or-profile", zone.value().toPlainString());
        }
        CalloutSize between = CalloutSize.between(Optional.empty(), BigDecimal.ZERO, zone.in(unit), unit);
        return CalloutPart.of(kind, between).with(new ToleranceFrame(round, modifier, datums, plain));
    }

    /** {@code Ø0.1 M A}: a modifier that lost its circle, or a datum. */
    private void requireNoLetterOfAModifier(boolean stroke) {
        if (!stroke && row.peek().isWord("M", "L", "S", "P") && isLetter(row.peek(1))) {
            throw new Refused("model.callout.modifier-or-datum", row.peek().text());
        }
    }

    private CalloutKind kind() {
        Token token = row.next();
        if (token.isWord("TRUE")) {
            row.next();
            return CalloutKind.POSITION;
        }
        if (token.isWord("CIRCULAR", "TOTAL")) {
            row.skip(isRunOut(row, 0) ? 3 : 1);
            return token.isWord("TOTAL") ? CalloutKind.TOTAL_RUNOUT : CalloutKind.CIRCULAR_RUNOUT;
        }
        if (token.isWord()) {
            return WORDS.get(token.capitals());
        }
        if (token.is('↗') && row.accept('↗')) {
            return CalloutKind.TOTAL_RUNOUT;
        }
        return SIGNS.get(token.text().charAt(0));
    }

    private static void judge(CalloutKind kind, boolean round, int datums) {
        if (FORM.contains(kind) && datums > 0) {
            throw new Refused("model.callout.form-with-datum", kind.named());
        }
        if (kind == CalloutKind.POSITION && datums == 0) {
            throw new Refused("model.callout.position-without-datum");
        }
        if (!FORM.contains(kind) && !PROFILES.contains(kind) && datums == 0) {
            throw new Refused("model.callout.no-datum", kind.named());
        }
        if (round && !ROUND.contains(kind)) {
            throw new Refused("model.callout.round-zone", kind.named());
        }
        if (kind == CalloutKind.CONCENTRICITY && !round) {
            throw new Refused("model.callout.zone-without-diameter");
        }
    }

    /** Takes the modifiers behind the zone or a datum. */
    private void modifiers() {
        while (true) {
            boolean bracket = row.peek().is('(')
                    && row.peek(1).isWord("M", "L", "S", "F")
                    && row.peek(2).is(')');
            if (bracket) {
                modified(row.peek(1).capitals().charAt(0));
                row.skip(3);
            } else if (row.peek().type() == Token.Type.SIGN
                    && MODIFIERS.indexOf(row.peek().text().charAt(0)) >= 0) {
                modified(row.next().text().charAt(0));
            } else if (row.accept('Ⓟ')) {
                plain = false;
                figures.read();
            } else {
                return;
            }
        }
    }

    private void modified(char sign) {
        switch (sign) {
            case 'Ⓜ', 'M' -> material = MaterialModifier.MMC;
            case 'Ⓛ', 'L' -> material = MaterialModifier.LMC;
            case 'Ⓢ', 'S' -> {} // regardless of feature size: as without
            default -> plain = false;
        }
    }

    private void datums() {
        while (isDatum()) {
            row.accept('|');
            StringBuilder letters = new StringBuilder(datum());
            while (row.peek().is('-') && isLetter(row.peek(1))) {
                row.next();
                letters.append('-').append(datum());
            }
            material = MaterialModifier.NONE;
            modifiers();
            plain &= material == MaterialModifier.NONE;
            datums.add(letters.toString());
        }
        if (datums.size() > MOST_DATUMS) {
            throw new Refused("model.callout.too-many-datums", MOST_DATUMS);
        }
    }

    private String datum() {
        Token token = row.next();
        if (token.isWord(OF_A_ZONE)) {
            throw new Refused("model.callout.zone-modifier", token.text());
        }
        return token.text();
    }

    private boolean isDatum() {
        return isLetter(row.peek().is('|') ? row.peek(1) : row.peek());
    }

    private static boolean isLetter(Token token) {
        return token.isWord()
                && token.text().length() <= 2
                && token.text().chars().allMatch(Character::isUpperCase)
                && !token.isWord("PL", "X");
    }
}
