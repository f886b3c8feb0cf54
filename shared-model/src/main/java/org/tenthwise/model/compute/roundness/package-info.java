/** Run-out of a round surface: the movement, the circle fitted to it, and how to move the jaws. One class a formula; pure. */
package org.tenthwise.model.compute.roundness;
