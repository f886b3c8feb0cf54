/** Comparison with a master of certified size. One class a formula; pure. */
package org.tenthwise.model.compute.comparison;
