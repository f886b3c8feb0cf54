/**
 * Strike out: which reading or answer of the step in hand does not count, and why. It stays in the record with its
 * reason.
 */
package org.tenthwise.app.ui.strike;
