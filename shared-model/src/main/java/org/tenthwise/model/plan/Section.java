package org.tenthwise.model.plan;

import org.tenthwise.model.quantity.Written;

/**
 * Where along the part run-out is read.
 *
 * @param name for people: "near the jaws"
 * @param at distance from the jaws, zero or more
 */
public record Section(String name, Written at) {}
