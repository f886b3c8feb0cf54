/** The pages of a record as they are printed, read on the tablet. */
package org.tenthwise.app.ui.pages;
