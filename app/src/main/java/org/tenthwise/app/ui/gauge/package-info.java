/**
 * The gauge of the step in hand: how it is set, set anew, another one taken, a wrong setting struck out. From here it
 * goes on to how the machine counts, where that was told wrongly.
 */
package org.tenthwise.app.ui.gauge;
