/**
 * Disposition: what becomes of a characteristic that did not pass, why, and who signs for it. Null is not passed and
 * not returned.
 */
package org.tenthwise.app.ui.dispose;
