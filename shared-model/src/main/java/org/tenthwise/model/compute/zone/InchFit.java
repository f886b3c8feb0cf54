package org.tenthwise.model.compute.zone;

import java.math.BigDecimal;
import java.util.Arrays;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * A class of fit of inch drawings: at a size it sets the limits of the hole and of the shaft together.
 *
 * <p>No formula: the tables of the standard, in thousandths of an inch on the basic size.
 *
 * <p>Lengths, exact. The least hole is the basic size.
 *
 * <p>A size on the edge of a step belongs to the step below. LT3 and LT4 begin over 0.24 in, FN3 over 0.95 in; nothing
 * goes over 19.69 in.
 *
 * <p>Source: ANSI B4.1-1967 (R2009), Tables of running and sliding, locational, and force and shrink fits; as printed
 * in Machinery's Handbook, 31st ed., Tables 8a to 12.
 */
public enum InchFit {
    /** Running and sliding fits, from close sliding to loose running. */
    RC1,
    RC2,
    RC3,
    RC4,
    RC5,
    RC6,
    RC7,
    RC8,
    RC9,
    /** Locational clearance fits. */
    LC1,
    LC2,
    LC3,
    LC4,
    LC5,
    LC6,
    LC7,
    LC8,
    LC9,
    LC10,
    LC11,
    /** Locational transition fits. */
    LT1,
    LT2,
    LT3,
    LT4,
    LT5,
    LT6,
    /** Locational interference fits. */
    LN1,
    LN2,
    LN3,
    /** Force and shrink fits. */
    FN1,
    FN2,
    FN3,
    FN4,
    FN5;

    private static final SizeTable FITS = SizeTable.read("inch-fits");
    private static final SizeTable FORCE_FITS = SizeTable.read("inch-force-fits");

    /**
     * @param name such as {@code RC4} or {@code RC 4}
     * @throws IllegalArgumentException if the standard has no such class
     */
    public static InchFit read(String name) {
        String plain = name.replace(" ", "");
        return Arrays.stream(values())
                .filter(fit -> fit.name().equals(plain))
                .findFirst()
                .orElseThrow(() -> new Refused(
                        "model.inch-fit.class-ansi",
                        name,
                        Arrays.stream(values()).map(Enum::name).toList()));
    }

    /** The hole; its lower deviation is zero. */
    public ZoneLimits hole(Length basic) {
        return new ZoneLimits(basic, at("hole", basic), Length.ZERO);
    }

    public ZoneLimits shaft(Length basic) {
        return new ZoneLimits(basic, at("shaft-upper", basic), at("shaft-lower", basic));
    }

    /** @throws IllegalArgumentException if the standard gives none at that size, with the reason */
    private Length at(String column, Length basic) {
        SizeTable table = table();
        String row = name() + "." + column;
        BigDecimal thousandths = table.at(row, basic.in(Unit.INCH))
                .orElseThrow(() -> new Refused(
                        "model.inch-fit.tabulated-ansi",
                        name(),
                        basic.in(Unit.INCH).toPlainString(),
                        table.filled(row)));
        return Length.of(thousandths.movePointLeft(3), Unit.INCH);
    }

    private SizeTable table() {
        return name().startsWith("FN") ? FORCE_FITS : FITS;
    }
}
