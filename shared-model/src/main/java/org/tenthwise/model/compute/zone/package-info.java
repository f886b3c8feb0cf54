/**
 * Tolerance zones of drawings: what a letter and a grade, or a class of fit, come to at a size. The metric ones after
 * ISO 286, the inch ones after ANSI B4.1. The tables are files beside the classes, exact to the last printed figure; a
 * size or a zone they do not hold is refused with the reason. In come a name and a size, out go deviations and limits.
 */
package org.tenthwise.model.compute.zone;
