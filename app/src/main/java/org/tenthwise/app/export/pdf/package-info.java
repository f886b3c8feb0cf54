/**
 * What is printed and filed: the record of a run, the three forms of a first-article report, and the views over parts.
 * PDF/A-3b (ISO 19005-3) on A4 or US letter, everything in it drawn by the one pen.
 *
 * <p>Evidence comes in; first leaves are laid out in pixels of 96 to the inch, which tests look at without a file, then
 * {@link org.tenthwise.app.export.pdf.PdfRecord} draws them into a document that embeds all it needs. A section is one
 * class and adds itself to a {@code PageFlow}, which turns the page. Free text is wrapped, never cut.
 */
package org.tenthwise.app.export.pdf;
