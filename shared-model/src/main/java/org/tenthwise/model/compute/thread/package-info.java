/** Pitch diameter of a screw thread from a measurement over wires. One class a formula; pure. */
package org.tenthwise.model.compute.thread;
