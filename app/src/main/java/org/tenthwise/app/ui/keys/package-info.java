/**
 * What is pressed: keys, the number pad, the letters, rows to choose from, pages of rows.
 *
 * <p>A view model holds what was typed or chosen and knows no control; a view lays it out. Typed text goes out exactly
 * as typed. Hardware keys reach a view model through {@link org.tenthwise.app.ui.keys.Typing}.
 */
package org.tenthwise.app.ui.keys;
