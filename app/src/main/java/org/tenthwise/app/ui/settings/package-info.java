/** What a person can set: the language, the display. */
package org.tenthwise.app.ui.settings;
