/**
 * The ledger in one SQLite file, the only place that speaks SQL.
 *
 * <p>One process at a time may write, held apart by a lock the system drops when the process ends; any number may read
 * meanwhile. An entry is on the disk before {@code append} returns: write-ahead log, {@code synchronous=FULL}. The numbered
 * SQL files beside this package make the table; a store made by a newer release is left alone.
 */
package org.tenthwise.app.store.sqlite;
