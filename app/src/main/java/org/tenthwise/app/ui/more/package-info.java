/**
 * What else there is to say of the step in hand, to be read at leisure: what the run screen has no room for, in full.
 */
package org.tenthwise.app.ui.more;
