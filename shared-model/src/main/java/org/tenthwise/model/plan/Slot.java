package org.tenthwise.model.plan;

/**
 * Room for one reading.
 *
 * @param key what the ledger knows the slot by, unique in the step: {@code 2.1} is the first reading at the second
 *     place
 * @param place where the reading is taken
 * @param repeat 1 for the first reading at the place
 */
public record Slot(String key, Place place, int repeat) {}
