/**
 * TOML text to raw tables: exact decimals, and the line and column of every key.
 *
 * <p>Text comes in, a {@link org.tenthwise.checklists.format.RawTable} or the places where it is not TOML goes out.
 * Nothing here knows what a plan is.
 */
package org.tenthwise.checklists.format;
