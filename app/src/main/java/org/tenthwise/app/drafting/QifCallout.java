package org.tenthwise.app.drafting;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.model.callout.CalloutKind;
import org.tenthwise.model.callout.CalloutPart;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * How a drawing writes a characteristic of a QIF document: in the words of the document where they say the same limits
 * or none, else made of its figures, so that the limits are always those of the figures.
 *
 * @param lengths what the lengths of the document are in
 * @param datums letters, with a blank between them
 * @param plain whether the figures and the datums are all there is to it
 */
record QifCallout(Unit lengths, QifKind kind, QifLimits limits, String datums, boolean plain) {

    /** Of these nothing is inspected, or what is stands in a frame. */
    private static final Set<CalloutKind> WITHOUT_LIMITS = Set.of(
            CalloutKind.REFERENCE, CalloutKind.BASIC, CalloutKind.BASIC_ANGLE, CalloutKind.NOTE, CalloutKind.PROCESS);

    /**
     * What stands in the list.
     *
     * @param beside whether the limits stand in figures beside it
     */
    record InList(String requirement, boolean beside) {}

    /**
     * @param described what the document says of it in words
     * @param thread its designation
     */
    InList written(Optional<String> described, Optional<String> thread) {
        if (limits.isEmpty()) {
            return new InList(thread.or(() -> described).orElseThrow(() -> new Refused("list.qif.no-words")), false);
        }
        return described
                .flatMap(words -> part(words).flatMap(part -> said(words, part)))
                .orElseGet(() -> new InList(made(), false));
    }

    private Optional<CalloutPart> part(String words) {
        try {
            List<CalloutPart> parts =
                    new CalloutReader(lengths, Optional.empty()).read(words).parts();
            return parts.stream().findFirst().filter(part -> parts.size() == 1);
        } catch (Refused e) {
            return Optional.empty();
        }
    }

    private Optional<InList> said(String words, CalloutPart part) {
        if (part.hasLimits()) {
            return isSame(part, part.lower(), limits.lower()) && isSame(part, part.upper(), limits.upper())
                    ? Optional.of(new InList(words, false))
                    : Optional.empty();
        }
        boolean beside = !WITHOUT_LIMITS.contains(part.kind())
                && !kind.isZone()
                && !kind.isOfAScale()
                && !kind.isAngle()
                && part.unit().filter(Unit::isOfLength).isPresent();
        return beside ? Optional.of(new InList(words, true)) : Optional.empty();
    }

    /** A zone has no lower limit here, and one of nothing on the drawing. */
    private boolean isSame(CalloutPart part, Optional<BigDecimal> drawn, Optional<BigDecimal> listed) {
        if (kind.isZone() && listed.isEmpty()) {
            return drawn.isEmpty() || drawn.get().signum() == 0;
        }
        boolean sameUnit = part.unit()
                .filter(unit ->
                        unit.isOfAngle() ? kind.isAngle() : unit.symbol().equals(limits.unit()))
                .isPresent();
        return sameUnit
                && drawn.isPresent() == listed.isPresent()
                && drawn.map(figure -> inDegrees(part, figure).compareTo(listed.orElseThrow()) == 0)
                        .orElse(true);
    }

    private static BigDecimal inDegrees(CalloutPart part, BigDecimal figure) {
        return part.unit()
                .filter(Unit::hasMarksInside)
                .map(unit -> Length.of(figure, unit).in(Unit.DEGREE))
                .orElse(figure);
    }

    private String made() {
        if (!plain) {
            throw new Refused("list.qif.zone");
        }
        String unit = kind.isOfAScale() ? " " + limits.unit() : kind.isAngle() ? limits.unit() : "";
        if (kind.isZone()) {
            String round = kind == QifKind.POSITION ? "Ø" : "";
            return (kind.sign() + " " + round + figure(limits.upper()) + " " + datums).strip();
        }
        if (limits.lower().isEmpty() || limits.upper().isEmpty()) {
            boolean most = limits.lower().isEmpty();
            return kind.sign() + figure(most ? limits.upper() : limits.lower()) + unit + (most ? " MAX" : " MIN");
        }
        return kind.isOfAScale()
                ? figure(limits.lower()) + "-" + figure(limits.upper()) + unit
                : kind.sign()
                        + figure(limits.upper())
                        + (kind.isAngle() ? unit : "")
                        + "/"
                        + figure(limits.lower())
                        + (kind.isAngle() ? unit : "");
    }

    /** With one place at least: two whole numbers with a stroke between them are a fraction. */
    private String figure(Optional<BigDecimal> limit) {
        BigDecimal figure = limit.orElseThrow();
        boolean whole = figure.scale() < 1 && !kind.isOfAScale() && !kind.isAngle();
        return (whole ? figure.setScale(1) : figure).toPlainString();
    }
}
