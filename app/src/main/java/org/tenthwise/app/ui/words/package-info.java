/**
 * What a person at the machine says in words of their own: a note, a doubt about the step in hand, or to whom the run
 * is handed over.
 */
package org.tenthwise.app.ui.words;
