package org.tenthwise.model.run;

/**
 * A run as a report has it: what was entered in it later is in no report that was drawn up before.
 *
 * @param run its id
 * @param entries how many it had
 * @param head hash over them, by which its record is known
 */
public record JoinedRun(String run, long entries, String head) {}
