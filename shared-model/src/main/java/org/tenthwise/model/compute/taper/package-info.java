/**
 * Cones and tapers: one way of writing them into the others, over rollers, by balls, on a sine bar, turned with the
 * tailstock set over. One class a formula; pure.
 */
package org.tenthwise.model.compute.taper;
