/** What a record is handed out as, known to every screen that hands one out. */
package org.tenthwise.app.handout;
