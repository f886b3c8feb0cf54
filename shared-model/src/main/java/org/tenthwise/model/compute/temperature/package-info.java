/** Sizes away from 20 °C: the correction, its uncertainty, and whether it matters at all. One class a formula; pure. */
package org.tenthwise.model.compute.temperature;
