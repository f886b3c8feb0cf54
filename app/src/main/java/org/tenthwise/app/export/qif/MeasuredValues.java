package org.tenthwise.app.export.qif;

import java.util.Optional;

/** The figures of a measurement: what is judged, the greatest and the least. */
final class MeasuredValues {

    private MeasuredValues() {}

    /** Nothing while something is still to come: what is half read is no result. */
    static void of(PlainFigures figures, XmlElement measurement, ItemFound found) {
        if (!found.isKnown()) {
            return;
        }
        measurement.add(found.value().map(value -> figures.measured("Value", value, found.places(), found.sure())));
        if (!found.ends().isEmpty()) {
            measurement.add(figures.measured("MaxValue", found.ends().get(1), found.places(), Optional.empty()));
            measurement.add(figures.measured("MinValue", found.ends().get(0), found.places(), Optional.empty()));
        }
    }
}
