/**
 * Where a hole or a pin lies to its true place: deviation, bonus from the size, the holes of a bolt circle, the
 * distance of two bores. One class a formula; pure.
 */
package org.tenthwise.model.compute.position;
