/**
 * Pitch diameter of a screw thread from a measurement over wires, and its root from one across the grooves. One class a
 * formula; pure.
 */
package org.tenthwise.model.compute.thread;
