/**
 * What was done in a run: entries that are only ever added to, and the run as they tell it.
 *
 * <p>Entries come from the ledger or from a session; {@link org.tenthwise.model.run.Run} answers what stands now: the
 * readings of the pass in hand, answers, settings, what was struck out, concessions, whether it is closed.
 */
package org.tenthwise.model.run;
