/** What a record, and a view over parts, is handed out as, known to every screen that hands one out. */
package org.tenthwise.app.handout;
