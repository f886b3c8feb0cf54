/** Sizes that stand in a row: what their tolerances come to together. One class a formula; pure. */
package org.tenthwise.model.compute.chain;
