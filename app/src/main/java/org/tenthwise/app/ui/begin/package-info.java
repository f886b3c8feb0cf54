/**
 * What is asked before a run begins: serial, material lot, machine, person, on a part and revision. A serial that is
 * begun already is said, and can be gone on with.
 */
package org.tenthwise.app.ui.begin;
