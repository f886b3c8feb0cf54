/**
 * Sizes and angles that no gauge reads by itself: worked out of one reading or more at a place and of sizes that are
 * known, rollers, pins, balls, blocks. One class a way of doing it, each on a formula of {@code model.compute}.
 */
package org.tenthwise.model.worked;
