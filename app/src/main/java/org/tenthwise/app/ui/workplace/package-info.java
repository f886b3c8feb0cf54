/**
 * The workplace, where something is measured or worked out: the list of what there is to do, the sheet of what is in
 * hand, and what lies under the hand. The run and the bench are laid out on it.
 */
package org.tenthwise.app.ui.workplace;
