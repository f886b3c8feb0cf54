/**
 * The ledger: what happened in the runs, in the order it happened, only ever added to.
 *
 * <p>In come events from the session; out go entries for the screens and rows, as they are stored, for records. Every
 * entry carries a hash over the one before it and over its own text, so that a text changed afterwards shows. How an
 * event is written as text lives here too; where the text is kept is the business of {@code app.store.sqlite}, and no
 * class of this package knows SQL.
 */
package org.tenthwise.app.store;
