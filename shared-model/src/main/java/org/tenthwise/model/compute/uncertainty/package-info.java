/**
 * How well a size is known and what may be decided from it: uncertainty components and their budget, the probability
 * that a size conforms, guard bands, risks, and the rules for rounding and for resolution. The verdict itself is in
 * {@code model.verdict}. One class a formula; pure.
 */
package org.tenthwise.model.compute.uncertainty;
