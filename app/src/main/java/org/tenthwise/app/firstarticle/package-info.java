/**
 * First-article reports: drawn up and signed in the ledger, laid out as the three forms, and written as files. What a
 * report comes to is worked out in {@code model.firstarticle}; here it becomes text.
 */
package org.tenthwise.app.firstarticle;
