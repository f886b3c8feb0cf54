/**
 * What to type into the offset register and which drills a deep hole needs. One class a sum; each reads what is given,
 * asks the model and writes the answer down.
 */
package org.tenthwise.app.sums.cutting;
