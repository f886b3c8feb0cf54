/**
 * The record of a run, as files to hand over: one class a format, behind {@link org.tenthwise.app.export.RecordFormat}.
 *
 * <p>In comes {@link org.tenthwise.app.export.Evidence}: the sheet, the entries as they are stored and the head of the
 * ledger. Out go bytes that are the same for the same evidence. {@link org.tenthwise.app.export.Exporter} puts them on
 * the disk, {@link org.tenthwise.app.export.RecordCheck} tells later whether a record is still what was written. Null
 * is neither passed nor returned.
 */
package org.tenthwise.app.export;
