/**
 * A screw thread as a drawing names it: form, diameter, pitch, starts. The sums over wires are in
 * {@code model.compute.thread}.
 */
package org.tenthwise.model.thread;
