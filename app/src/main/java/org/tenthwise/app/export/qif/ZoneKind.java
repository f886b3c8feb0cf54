package org.tenthwise.app.export.qif;

import java.util.Optional;
import org.tenthwise.model.tolerance.MaterialModifier;

/**
 * A geometrical tolerance: a run-out, a form, an orientation or a location within a zone.
 *
 * @param datum id of the frame of its datum; absent where the plan names none
 * @param shape of the zone
 * @param modifier whether a size adds to the zone
 */
record ZoneKind(String name, Optional<String> datum, ZoneShape shape, MaterialModifier modifier, PlainFigures figures)
        implements CharacteristicKind {

    /** What the standard asks of a zone beside its width. */
    enum ZoneShape {
        /** Nothing, and a form knows no datum. */
        OF_A_FORM,
        /** Nothing. */
        PLAIN,
        /** Between two planes. */
        PLANAR,
        /** Round. */
        DIAMETRICAL
    }

    @Override
    public void define(XmlElement definition) {
        definition.add(figures.drawn("ToleranceValue", figures.limits().upper().orElseThrow()));
        if (shape != ZoneShape.OF_A_FORM) {
            definition.add(datum.map(id -> XmlElement.text("DatumReferenceFrameId", id)));
        }
        if (shape == ZoneShape.PLANAR || shape == ZoneShape.DIAMETRICAL) {
            definition.add("MaterialCondition", condition());
            definition.add(new XmlElement("ZoneShape")
                    .add(new XmlElement(shape == ZoneShape.PLANAR ? "PlanarZone" : "DiametricalZone")));
        }
    }

    private String condition() {
        return switch (modifier) {
            case NONE -> "REGARDLESS";
            case MMC -> "MAXIMUM";
            case LMC -> "LEAST";
        };
    }

    /** What is wanted of it is nothing at all. */
    @Override
    public void want(XmlElement nominal) {}

    @Override
    public void measure(XmlElement measurement, ItemFound found) {
        MeasuredValues.of(figures, measurement, found);
        if (shape == ZoneShape.DIAMETRICAL && found.isKnown()) {
            measurement.add(
                    found.bonus().map(bonus -> figures.measured("Bonus", bonus, found.places(), Optional.empty())));
        }
    }
}
