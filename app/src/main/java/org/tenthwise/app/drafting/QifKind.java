package org.tenthwise.app.drafting;

import java.util.Arrays;
import java.util.Optional;
import org.tenthwise.model.words.Refused;

/** The kinds of characteristic of QIF that a plan can take: how each has its limits, and how a drawing writes it. */
enum QifKind {
    DIAMETER("Diameter", Form.LENGTH, "Ø"),
    WIDTH("Width", Form.LENGTH, ""),
    DEPTH("Depth", Form.LENGTH, ""),
    LENGTH("Length", Form.LENGTH, ""),
    HEIGHT("Height", Form.LENGTH, ""),
    THICKNESS("Thickness", Form.LENGTH, ""),
    RADIUS("Radius", Form.LENGTH, "R"),
    DISTANCE("DistanceBetween", Form.LENGTH, ""),
    DISTANCE_FROM("DistanceFrom", Form.LENGTH, ""),
    OWN_LENGTH("UserDefinedLinear", Form.LENGTH, ""),
    ANGLE("Angle", Form.ANGLE, ""),
    ANGLE_BETWEEN("AngleBetween", Form.ANGLE, ""),
    ANGLE_FROM("AngleFrom", Form.ANGLE, ""),
    OWN_ANGLE("UserDefinedAngular", Form.ANGLE, ""),
    CIRCULAR_RUN_OUT("CircularRunout", Form.ZONE, "↗"),
    TOTAL_RUN_OUT("TotalRunout", Form.ZONE, "⌰"),
    FLATNESS("Flatness", Form.ZONE, "⏥"),
    PERPENDICULARITY("Perpendicularity", Form.ZONE, "⟂"),
    PARALLELISM("Parallelism", Form.ZONE, "∥"),
    SYMMETRY("Symmetry", Form.ZONE, "⌯"),
    CIRCULARITY("Circularity", Form.ZONE, "○"),
    CYLINDRICITY("Cylindricity", Form.ZONE, "⌭"),
    POSITION("Position", Form.ROUND_ZONE, "⌖"),
    OWN_UNIT("UserDefinedUnit", Form.SCALE, ""),
    THREAD("Thread", Form.WORDS, ""),
    OWN_ATTRIBUTE("UserDefinedAttribute", Form.WORDS, "");

    /** How it has its limits. */
    private enum Form {
        LENGTH,
        ANGLE,
        ZONE,
        /** Drawn with Ø, where the document says so. */
        ROUND_ZONE,
        SCALE,
        WORDS
    }

    private final String name;
    private final Form form;
    private final String sign;

    QifKind(String name, Form form, String sign) {
        this.name = name;
        this.form = form;
        this.sign = sign;
    }

    static Optional<QifKind> of(String name) {
        return Arrays.stream(values()).filter(kind -> kind.name.equals(name)).findFirst();
    }

    boolean isOfAScale() {
        return form == Form.SCALE || form == Form.WORDS;
    }

    boolean isZone() {
        return form == Form.ZONE || form == Form.ROUND_ZONE;
    }

    boolean isAngle() {
        return form == Form.ANGLE;
    }

    /** What a drawing writes before the figures. */
    String sign() {
        return sign;
    }

    /** @throws Refused if it has none that can be taken */
    QifLimits limits(XmlTree definition, XmlTree nominal, QifUnits units) {
        return switch (form) {
            case LENGTH -> QifLimits.of(tolerance(definition), nominal.at("TargetValue"), units::of);
            case ANGLE -> QifLimits.of(tolerance(definition), nominal.at("TargetValue"), units::ofAngle);
            case SCALE -> QifLimits.of(nominal, nominal.at("TargetValue"), units::of);
            case ZONE, ROUND_ZONE -> QifLimits.atMost(zone(definition), units);
            case WORDS -> QifLimits.none();
        };
    }

    /** Whether its figures and its datums are all there is: no size adds to its zone, and the zone is of its shape. */
    boolean isPlain(XmlTree definition) {
        boolean grows = definition
                .said("MaterialCondition")
                .filter(condition -> !condition.equals("REGARDLESS") && !condition.equals("NONE"))
                .isPresent();
        boolean shaped = form != Form.ROUND_ZONE
                || definition.at("ZoneShape", "DiametricalZone").isPresent();
        return !grows && shaped;
    }

    private static XmlTree tolerance(XmlTree definition) {
        definition.said("NonTolerance").ifPresent(said -> {
            throw new Refused("list.qif.not-toleranced", said);
        });
        return definition.at("Tolerance").orElseThrow(() -> new Refused("list.qif.no-limits"));
    }

    private static XmlTree zone(XmlTree definition) {
        return definition.at("ToleranceValue").orElseThrow(() -> new Refused("list.qif.no-limits"));
    }
}
