/**
 * About Tenthwise: its version, what it is made with and under which licences, where the data lies, and the cautions.
 */
package org.tenthwise.app.ui.about;
