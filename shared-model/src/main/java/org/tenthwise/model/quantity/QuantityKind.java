package org.tenthwise.model.quantity;

/**
 * What a figure is of: a length, an angle, or what one scale counts. Figures of two kinds are never added, compared or
 * written in one another's units, and every scale is a kind of its own: neither µm and µin of a surface nor HRC and HBW
 * of its hardness are turned into one another.
 *
 * @param name of the kind; of a scale, its unit
 */
public record QuantityKind(String name, boolean isScale) {

    public static final QuantityKind LENGTH = new QuantityKind("length", false);

    public static final QuantityKind ANGLE = new QuantityKind("angle", false);

    static QuantityKind ofScale(String unit) {
        return new QuantityKind(unit, true);
    }

    @Override
    public String toString() {
        return name;
    }
}
