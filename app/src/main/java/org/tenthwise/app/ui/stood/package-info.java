/** Where the first reading of a turn was really taken. */
package org.tenthwise.app.ui.stood;
