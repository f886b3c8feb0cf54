package org.tenthwise.app.export.qif;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.tolerance.Limits;

/**
 * A length or an angle with one limit or two.
 *
 * @param what is measured, for a kind that is not of the standard
 * @param nominal as the drawing has it, in the unit of the limits; absent where it gives limits alone
 */
record DimensionKind(String name, Optional<String> what, Optional<BigDecimal> nominal, PlainFigures figures)
        implements CharacteristicKind {

    @Override
    public void define(XmlElement definition) {
        Limits limits = figures.limits();
        XmlElement tolerance = new XmlElement("Tolerance")
                .add(limits.upper().map(upper -> figures.drawn("MaxValue", upper)))
                .add(limits.lower().map(lower -> figures.drawn("MinValue", lower)))
                .add("DefinedAsLimit", "true");
        definition.add(tolerance).add(what.map(said -> XmlElement.text("WhatToMeasure", said)));
    }

    @Override
    public void want(XmlElement nominal) {
        nominal.add(this.nominal.map(figure -> figures.drawn("TargetValue", figure)));
    }

    @Override
    public void measure(XmlElement measurement, ItemFound found) {
        MeasuredValues.of(figures, measurement, found);
    }
}
