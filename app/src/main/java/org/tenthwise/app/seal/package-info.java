/**
 * What a station's key signs of the ledger: the head of every closed run. In go a ledger and the key beside it; out
 * comes the same ledger, with one more entry behind what closes a run or follows in one. No screen and no command knows
 * of it.
 */
package org.tenthwise.app.seal;
