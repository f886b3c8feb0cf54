/**
 * The sums of the bench on the tablet: eight keys to choose from, and for each a form whose answer, picture, formula
 * and source follow what is typed. A view model holds what was typed and knows no control; the views lay it out. Null
 * is not passed and not returned.
 */
package org.tenthwise.app.ui.bench;
