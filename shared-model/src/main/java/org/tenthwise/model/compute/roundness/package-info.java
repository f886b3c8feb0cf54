/**
 * Run-out of a round surface: the movement, the circle fitted to it, how the work shifts and leans, and what to do in
 * the order of the hand to true it up. One class a formula; pure.
 */
package org.tenthwise.model.compute.roundness;
