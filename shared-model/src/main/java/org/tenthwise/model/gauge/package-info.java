/**
 * Gauges and how they were set: kind, sense, master, zero. What a gauge then read is a reading and lives in
 * {@code model.run}.
 */
package org.tenthwise.model.gauge;
