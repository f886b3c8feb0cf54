/**
 * Close and sign: what is open, what failed, what was signed for, how the record will be called, and who signs for
 * what. A run that is not finished is closed only after a warning.
 */
package org.tenthwise.app.ui.sign;
