/** A plug in a bore: the clearance between them. One class a formula; pure. */
package org.tenthwise.model.compute.fit;
