/**
 * What happens to the store beside the work: backups, and the look at what was not looked at on opening. In go an open
 * store, a folder and a clock; out come files, and a sentence where something went wrong.
 */
package org.tenthwise.app.backup;
