package org.tenthwise.model.plan;

import java.util.Optional;
import org.tenthwise.model.quantity.Written;

/**
 * Where the drawing puts the axis of a hole or a pin, by basic dimensions.
 *
 * @param name which of several; absent where there is one alone
 * @param x from the datum, along the first direction of the drawing's frame; any sign
 * @param y along the direction square to it
 */
public record TruePlace(Optional<String> name, Written x, Written y) {}
