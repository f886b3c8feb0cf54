/** What a person can set: the language, the display, second copies of backups, machines and people of the shop. */
package org.tenthwise.app.ui.settings;
