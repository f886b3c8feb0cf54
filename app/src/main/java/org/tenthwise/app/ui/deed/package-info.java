/**
 * What is done to the run in hand by a form: a reading struck out, a gauge taken or set anew, a setting withdrawn, a
 * disposition, a cut on what is read so far, how the machine counts, where a first reading was taken, a run put away, a
 * note, a doubt, handing over. A form is what it asks and the deed it leads to.
 */
package org.tenthwise.app.ui.deed;
