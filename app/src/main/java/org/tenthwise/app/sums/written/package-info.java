/**
 * What a sum is given as it is written down: one JSON object, read strictly, every number as the decimal that stands
 * there. Text goes in; figures, words, lists and tables come out, or a sentence that says what cannot be read. Nothing
 * is ever null.
 */
package org.tenthwise.app.sums.written;
