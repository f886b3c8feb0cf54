/** Disposition: what becomes of a characteristic that did not pass, why, and who signs for it. */
package org.tenthwise.app.ui.dispose;
