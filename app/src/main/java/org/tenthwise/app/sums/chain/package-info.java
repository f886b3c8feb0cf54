/**
 * Sizes that stand in a row, and what is worked out of several. One class a sum; each reads what is given, asks the
 * model and writes the answer down.
 */
package org.tenthwise.app.sums.chain;
