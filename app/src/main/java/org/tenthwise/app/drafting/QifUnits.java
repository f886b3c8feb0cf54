package org.tenthwise.app.drafting;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * The units of a QIF document, by what it says they are in metres and radians, not by what it calls them. In one that
 * says nothing every length would be in metres, which no drawing of a machined part is: it is not taken.
 */
final class QifUnits {

    private static final Map<BigDecimal, Unit> IN_METRES = Map.of(
            new BigDecimal("0.001"), Unit.MILLIMETRE,
            new BigDecimal("0.0254"), Unit.INCH);

    /** π / 180, as far as any writer of a document has it. */
    private static final BigDecimal DEGREE = new BigDecimal("0.0174533");

    private static final BigDecimal NEAR = new BigDecimal("0.0000001");

    private final Unit lengths;
    private final Map<String, Optional<Unit>> named = new HashMap<>();
    private final boolean degrees;

    /**
     * @param document the root
     * @throws Refused if it does not say what its lengths are in, or that is neither millimetres nor inches
     */
    QifUnits(XmlTree document) {
        XmlTree primary = document.at("FileUnits", "PrimaryUnits").orElseThrow(() -> new Refused("list.qif.no-units"));
        XmlTree length = primary.at("PMILinearUnit")
                .or(() -> primary.at("LinearUnit"))
                .orElseThrow(() -> new Refused("list.qif.no-units"));
        this.lengths = length(length).orElseThrow(() -> new Refused("list.qif.units", name(length)));
        this.degrees = primary.at("PMIAngularUnit")
                .or(() -> primary.at("AngularUnit"))
                .filter(QifUnits::isDegree)
                .isPresent();
        Stream.concat(
                        primary.children().stream(),
                        document.at("FileUnits", "OtherUnits").stream().flatMap(others -> others.children().stream()))
                .filter(unit -> unit.name().endsWith("LinearUnit"))
                .forEach(unit -> named.put(name(unit), length(unit)));
    }

    private static String name(XmlTree unit) {
        return unit.said("UnitName").orElse("");
    }

    private static Optional<Unit> length(XmlTree unit) {
        return factor(unit).flatMap(factor -> IN_METRES.entrySet().stream()
                .filter(known -> known.getKey().compareTo(factor) == 0)
                .map(Map.Entry::getValue)
                .findFirst());
    }

    private static boolean isDegree(XmlTree unit) {
        return factor(unit)
                .filter(factor -> factor.subtract(DEGREE).abs().compareTo(NEAR) < 0)
                .isPresent();
    }

    /** Absent where a unit is not a multiple of the standard one. */
    private static Optional<BigDecimal> factor(XmlTree unit) {
        boolean shifted = unit.at("UnitConversion", "Offset").isPresent();
        return unit.said("UnitConversion", "Factor")
                .filter(text -> !shifted && text.matches("\\d{1,9}(\\.\\d{1,30})?"))
                .map(BigDecimal::new);
    }

    /** Of the document. */
    Unit lengths() {
        return lengths;
    }

    /**
     * The unit of a figure as a list has it.
     *
     * @throws Refused if it is one that a drawing here is not in
     */
    String of(XmlTree figure) {
        Optional<String> scale = figure.attribute("unitName");
        if (scale.isPresent()) {
            return scale.get();
        }
        Optional<String> own = figure.attribute("linearUnit");
        if (own.isPresent()) {
            return named.getOrDefault(own.get(), Optional.empty())
                    .orElseThrow(() -> new Refused("list.qif.units", own.get()))
                    .symbol();
        }
        return lengths.symbol();
    }

    /** @throws Refused if an angle is in anything but degrees */
    String ofAngle(XmlTree figure) {
        if (!degrees || figure.attribute("angularUnit").isPresent()) {
            throw new Refused("list.qif.angles");
        }
        return Unit.DEGREE.symbol();
    }
}
