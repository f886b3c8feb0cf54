/** What was read over several parts: all characteristics of a part number, and one of them part by part. */
package org.tenthwise.app.ui.history;
