/** The next cut: signing for one on what is read so far, and how the register of the machine counts. */
package org.tenthwise.app.ui.cut;
