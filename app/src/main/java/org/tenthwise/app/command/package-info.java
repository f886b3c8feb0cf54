/**
 * The command line: one class a command. Words come in, lines and an exit code go out; the work itself is done by the
 * checklists, the session, the ledger and the exports, as on the screens.
 *
 * <p>Trouble is one line that says what is wrong and what would be right, and exit code 2. What needs a screen is
 * handed in from outside, so that no class of this package knows one.
 */
package org.tenthwise.app.command;
