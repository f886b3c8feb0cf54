/**
 * A plug in a bore: the clearance between them, at 20 °C and at the temperatures they have. One class a formula; pure.
 */
package org.tenthwise.model.compute.fit;
