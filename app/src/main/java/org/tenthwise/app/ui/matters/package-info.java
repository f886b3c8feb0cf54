/** What is open over all runs of the store, and where somebody signs for what becomes of it. */
package org.tenthwise.app.ui.matters;
