package org.tenthwise.app.export.qif;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.tolerance.Limits;

/**
 * What is counted in a unit of its own: roughness, hardness, torque.
 *
 * <p>The standard asks for a target here. Where the drawing names none, it is a limit, so that nothing is aimed at that
 * the drawing does not say; an attribute tells so.
 *
 * @param nominal as the drawing has it; absent where it gives limits alone
 */
record OwnUnitKind(Optional<BigDecimal> nominal, PlainFigures figures) implements CharacteristicKind {

    @Override
    public String name() {
        return "UserDefinedUnit";
    }

    /** Its limits stand with what is wanted. */
    @Override
    public void define(XmlElement definition) {}

    @Override
    public void want(XmlElement nominal) {
        Limits limits = figures.limits();
        nominal.add(this.nominal
                        .map(figure -> figures.drawn("TargetValue", figure))
                        .orElseGet(() -> figures.drawn(
                                "TargetValue", limits.upper().or(limits::lower).orElseThrow())))
                .add(limits.upper().map(upper -> figures.drawn("MaxValue", upper)))
                .add(limits.lower().map(lower -> figures.drawn("MinValue", lower)))
                .add("DefinedAsLimit", "true");
    }

    @Override
    public void measure(XmlElement measurement, ItemFound found) {
        MeasuredValues.of(figures, measurement, found);
    }
}
