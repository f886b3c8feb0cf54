package org.tenthwise.checklists.materials;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Expansion;

/**
 * A material of the table.
 *
 * @param designation by a standard or by what it is made of, never by a brand
 * @param condition as delivered or treated; says so where the source does not give it
 * @param expansion as the source prints it
 * @param between temperatures the figure holds for, in °C, in the words of the source
 * @param source where the figure is printed
 */
public record Material(String designation, String condition, Expansion expansion, String between, String source) {

    /** Melts of one designation differ by about so much; common practice. */
    private static final BigDecimal LEAST_SHARE = new BigDecimal("0.9");

    private static final BigDecimal GREATEST_SHARE = new BigDecimal("1.1");

    /** Designation and condition, as a plan names it. */
    public String name() {
        return designation + ", " + condition;
    }

    /** A tenth less than printed. */
    public Expansion least() {
        return new Expansion(expansion.millionths().multiply(LEAST_SHARE));
    }

    /** A tenth more than printed. */
    public Expansion greatest() {
        return new Expansion(expansion.millionths().multiply(GREATEST_SHARE));
    }
}
