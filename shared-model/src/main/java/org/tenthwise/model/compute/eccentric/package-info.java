/** Work turned off its own centre. One class a formula; pure. */
package org.tenthwise.model.compute.eccentric;
