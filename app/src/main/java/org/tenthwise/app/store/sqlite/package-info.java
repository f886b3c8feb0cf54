/**
 * The ledger in one SQLite file, the only place that speaks SQL.
 *
 * <p>One process at a time may write, held apart by a lock the system drops when the process ends; any number may read
 * meanwhile. An entry is on the disk, in the one file, before {@code append} returns: a journal that is emptied,
 * {@code synchronous=FULL}. The numbered SQL files beside this package make the table, and whatever differs from what
 * they make is refused; a store made by a newer release is left alone.
 */
package org.tenthwise.app.store.sqlite;
