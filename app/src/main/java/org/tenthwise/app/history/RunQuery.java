package org.tenthwise.app.history;

import java.util.Optional;

/**
 * Which runs a page of a list has, the one last worked on first.
 *
 * @param shelf where the runs lie that are asked for
 * @param machine whose runs come first; absent where machines make no difference
 * @param words each of them stands in the part number, the serial, the lot or the name of a person; empty for all runs
 * @param after the last run of the page before; absent for the first page
 * @param most how many runs a page has
 */
public record RunQuery(RunShelf shelf, Optional<String> machine, String words, Optional<RunFacts> after, int most) {}
