/** Where the first reading by angle of a turn was really taken, if not at the place asked for. */
package org.tenthwise.app.ui.stood;
