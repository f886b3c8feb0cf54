package org.tenthwise.model.tolerance;

import org.tenthwise.model.words.Message;

/**
 * What limits were worked out from, where the plan names a zone or a thread instead of writing the limits out.
 *
 * @param designation as the drawing has it: {@code Ø20 H7}, {@code Tr 40x7-7e}
 * @param standard where its limits stand, and whether in a table or by a formula
 */
public record Origin(String designation, Message standard) {}
