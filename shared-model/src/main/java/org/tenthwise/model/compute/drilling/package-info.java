/**
 * Holes deeper than one drill goes: which part of the depth each drill of a set takes and how long it must be, pecks,
 * and the length of a point. One class a formula; pure.
 */
package org.tenthwise.model.compute.drilling;
