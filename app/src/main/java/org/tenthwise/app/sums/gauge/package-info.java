/**
 * What a reading means: comparison, run-out, lever and lobes. One class a sum; each reads what is given, asks the model
 * and writes the answer down.
 */
package org.tenthwise.app.sums.gauge;
