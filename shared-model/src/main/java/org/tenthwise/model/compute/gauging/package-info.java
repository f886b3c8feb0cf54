/** Plain plugs and rings: how well they are made. One class a formula; pure. */
package org.tenthwise.model.compute.gauging;
