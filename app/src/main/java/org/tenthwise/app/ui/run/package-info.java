/**
 * The run screen: one check at a time, large, with its place in the plan beside it and a keypad under the hand.
 *
 * <p>A {@link org.tenthwise.app.session.State} comes in; {@link org.tenthwise.app.ui.run.RunPresenter} puts it into
 * words as a {@link org.tenthwise.app.ui.run.RunScreenState}; the views lay that out. What is typed and tapped goes to
 * the session on the thread of the ledger.
 */
package org.tenthwise.app.ui.run;
