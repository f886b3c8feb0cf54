package org.tenthwise.app.export.qif;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Decimals;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.tolerance.Limits;

/**
 * The figures of one characteristic as plain decimals with their number of places, which keeps the noughts at the end;
 * in the unit of its limits, angles in decimals of a degree.
 *
 * <p>What is worked out is rounded to more places than any gauge shows (six of a millimetre, eight of an inch or of a
 * degree), yet never on a limit or over one that it does not lie on.
 */
final class PlainFigures {

    private static final Map<Unit, Integer> PLACES = Map.of(Unit.MILLIMETRE, 6, Unit.INCH, 8, Unit.DEGREE, 8);
    private static final int PLACES_OF_A_SCALE = 6;
    /** As many as the model gives a quotient or a root. */
    private static final int PLACES_OF_AN_UNCERTAINTY = 12;

    private final FileUnits units;
    private final Limits limits;
    private final Unit unit;

    /** @param limits of the characteristic */
    PlainFigures(FileUnits units, Limits limits) {
        this.units = units;
        this.limits = limits;
        this.unit = limits.unit().isOfAngle() ? Unit.DEGREE : limits.unit();
    }

    Unit unit() {
        return unit;
    }

    Limits limits() {
        return limits;
    }

    /** A figure of the drawing, as it is written there. */
    XmlElement drawn(String name, Written written) {
        return drawn(
                name,
                unit.equals(written.unit())
                        ? written.figure()
                        : written.length().in(unit));
    }

    /** The same, in the unit of the characteristic. */
    XmlElement drawn(String name, BigDecimal figure) {
        return units.marked(figure(name, figure), unit);
    }

    /**
     * A figure that was found.
     *
     * @param known places it is known to
     * @param sure its standard uncertainty; absent where nobody says
     */
    XmlElement measured(String name, Length length, int known, Optional<Length> sure) {
        XmlElement element = figure(name, plain(length, known));
        sure.filter(of -> of.kind().equals(length.kind()) && of.signum() > 0)
                .ifPresent(of ->
                        element.with("combinedUncertainty", uncertainty(of)).with("meanError", "0"));
        return units.marked(element, unit);
    }

    /** A figure that was found, with its unit. */
    String said(Length length, int known) {
        return unit.behind(plain(length, known).toPlainString());
    }

    /** What a reading stands for, in words of the unit; absent for one of another kind: an angle beside lengths. */
    Optional<String> said(Measured measured) {
        return Optional.of(measured.value())
                .filter(value -> value.kind().equals(unit.kind()))
                .map(value -> said(value, known(measured)));
    }

    private String uncertainty(Length standard) {
        BigDecimal figure = standard.in(unit);
        return (figure.scale() > PLACES_OF_AN_UNCERTAINTY
                        ? figure.setScale(PLACES_OF_AN_UNCERTAINTY, RoundingMode.HALF_UP)
                        : figure)
                .toPlainString();
    }

    private static XmlElement figure(String name, BigDecimal figure) {
        BigDecimal plain = figure.scale() < 0 ? figure.setScale(0) : figure;
        return XmlElement.text(name, plain.toPlainString()).with("decimalPlaces", String.valueOf(plain.scale()));
    }

    private BigDecimal plain(Length length, int known) {
        BigDecimal exact = length.in(unit);
        int most = Math.max(known, PLACES.getOrDefault(unit, PLACES_OF_A_SCALE));
        BigDecimal rounded = exact.scale() > most
                ? exact.setScale(most, RoundingMode.HALF_UP).stripTrailingZeros()
                : exact;
        BigDecimal kept = staysOnItsSide(length, rounded) ? rounded : exact;
        return kept.scale() < known ? kept.setScale(known) : kept;
    }

    private boolean staysOnItsSide(Length exact, BigDecimal rounded) {
        Length shown = Length.of(rounded, unit);
        return Stream.of(limits.lower(), limits.upper())
                .flatMap(Optional::stream)
                .map(Written::length)
                .allMatch(limit -> Integer.signum(limit.compareTo(exact)) == Integer.signum(limit.compareTo(shown)));
    }

    /** To how many places the size of a reading is known, from the reading and what is written of its setting. */
    int known(Measured measured) {
        return Stream.concat(
                        Stream.of(measured.reading().typed()),
                        measured.reading().setting().stream()
                                .flatMap(setting ->
                                        Stream.concat(setting.certified().stream(), setting.zero().stream())))
                .mapToInt(written -> Decimals.among(written, unit))
                .max()
                .orElse(0);
    }
}
