package org.tenthwise.app.session;

/**
 * A setting that does not count any more, with what was read under it.
 *
 * @param entry {@code seq} of the setting
 * @param readings how many readings that counted until now were made under it
 */
public record Withdrawn(String run, long entry, int step, int readings) {}
