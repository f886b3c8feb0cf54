/**
 * Zones of limits and fits, and the play between two sizes. One class a sum; each reads what is given, asks the model
 * and writes the answer down.
 */
package org.tenthwise.app.sums.fit;
