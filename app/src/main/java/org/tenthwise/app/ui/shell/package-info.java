/**
 * The one window: shows a screen at a time, goes back, feeds it what a hardware keyboard or a gauge types, scales it to
 * the display, and lays messages over it that stay until answered.
 *
 * <p>Screens come in as {@link org.tenthwise.app.ui.shell.Screen}; the shell knows none of them by name. A screen goes
 * elsewhere by its {@link org.tenthwise.app.ui.shell.Navigator} and reaches the ledger by
 * {@link org.tenthwise.app.ui.shell.LedgerTasks}.
 */
package org.tenthwise.app.ui.shell;
