/**
 * The record as a QIF 3.0 results document (ANSI/DMSC QIF 3.0, ISO 23952:2020): one class for each kind of thing in it.
 * The document is made as a tree first, so that every count and the greatest id are those of what stands in it.
 */
package org.tenthwise.app.export.qif;
