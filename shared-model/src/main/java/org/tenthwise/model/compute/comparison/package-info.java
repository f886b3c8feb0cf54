/**
 * What the reading of a comparing gauge means: against its master, at an angle, over lobes, beside the middle. One
 * class a formula; pure.
 */
package org.tenthwise.model.compute.comparison;
