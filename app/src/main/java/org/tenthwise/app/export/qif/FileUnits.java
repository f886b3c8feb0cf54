package org.tenthwise.app.export.qif;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.tenthwise.model.quantity.Unit;

/**
 * The units of a document: lengths in that of the plan, angles in degrees. Without them every length would be in
 * metres, so they are always written. Another unit of length, and those of scales, are declared where they are used.
 */
final class FileUnits {

    static final String DEGREE = "degree";

    /** A degree in radians to 16 figures, as the standard counts angles; a number no reader can have exactly. */
    private static final String RADIANS = "0.01745329251994330";

    private final Unit lengths;
    private final Set<String> scales = new TreeSet<>();
    private boolean bothLengths;

    /** @param lengths what the plan's lengths are in */
    FileUnits(Unit lengths) {
        this.lengths = lengths;
    }

    /** Marks a figure that is in another unit of length than the document's, or of a scale. */
    XmlElement marked(XmlElement figure, Unit unit) {
        if (unit.isOfScale()) {
            scales.add(unit.symbol());
            return figure.with("unitName", unit.symbol());
        }
        if (unit.isOfLength() && !unit.equals(lengths)) {
            bothLengths = true;
            return figure.with("linearUnit", name(unit));
        }
        return figure;
    }

    /** Once everything else was made. */
    XmlElement element() {
        XmlElement units = new XmlElement("FileUnits")
                .add(new XmlElement("PrimaryUnits")
                        .add(unit("AngularUnit", "radian", DEGREE, RADIANS))
                        .add(length(lengths)));
        if (bothLengths) {
            units.addList("OtherUnits", List.of(length(lengths.equals(Unit.INCH) ? Unit.MILLIMETRE : Unit.INCH)));
        }
        List<XmlElement> defined = new ArrayList<>();
        scales.forEach(scale -> defined.add(
                new XmlElement("UserDefinedUnit").add("WhatIsMeasured", scale).add("UnitName", scale)));
        return units.addList("UserDefinedUnits", defined);
    }

    private static XmlElement length(Unit unit) {
        return unit("LinearUnit", "meter", name(unit), unit.equals(Unit.INCH) ? "0.0254" : "0.001");
    }

    private static String name(Unit unit) {
        return unit.equals(Unit.INCH) ? "inch" : unit.symbol();
    }

    private static XmlElement unit(String kind, String standard, String name, String factor) {
        return new XmlElement(kind)
                .add("SIUnitName", standard)
                .add("UnitName", name)
                .add(new XmlElement("UnitConversion").add("Factor", factor));
    }
}
