package org.tenthwise.model.plan;

/**
 * What the drawing or the order names of a material, a process or a test; each empty where neither names it.
 *
 * @param specification its number, with class
 * @param form bar, plate, forging; of a material alone
 * @param code the one the customer asks for
 * @param supplier where it comes from or is done
 */
public record Specified(String specification, String form, String code, String supplier) {

    /** Of which nothing is named. */
    public static final Specified NOTHING = new Specified("", "", "", "");
}
