/**
 * Tables of standards that ship inside the model as data files: a line a row, figures apart by commas, several figures
 * of one kind apart by blanks. The source stands at the head of each file behind a {@code #}. Nothing is ever null.
 */
package org.tenthwise.model.table;
