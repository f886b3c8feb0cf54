/**
 * The next cut: signing for one on what is read so far, and how the register of the machine counts. Null is not passed
 * and not returned.
 */
package org.tenthwise.app.ui.cut;
