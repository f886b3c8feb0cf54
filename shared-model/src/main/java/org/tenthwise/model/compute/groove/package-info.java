/** Vee grooves measured over a pin. */
package org.tenthwise.model.compute.groove;
