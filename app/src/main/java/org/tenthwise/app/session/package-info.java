/**
 * The run in hand, without a screen: what is asked next, what was typed, what became of it.
 *
 * <p>A {@link org.tenthwise.app.session.Runs} opens and begins runs on one ledger; a
 * {@link org.tenthwise.app.session.RunSession} takes the readings of one run. Both work on the thread that owns the
 * ledger and hand out immutable states; {@link org.tenthwise.app.session.Background} carries those to the screen.
 */
package org.tenthwise.app.session;
