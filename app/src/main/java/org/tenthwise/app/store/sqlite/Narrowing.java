package org.tenthwise.app.store.sqlite;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;

/**
 * What is looked for, as conditions on {@code drawn_run r}, {@code drawn_characteristic c} and {@code drawn_reading d}.
 *
 * @param sql each condition behind its AND, with a question mark for its value
 * @param values in the order of the question marks
 */
record Narrowing(String sql, List<Object> values) {

    private static final Set<SoughtBy> OF_RUNS =
            EnumSet.of(SoughtBy.PART_NUMBER, SoughtBy.SERIAL, SoughtBy.LOT, SoughtBy.MACHINE, SoughtBy.KIND);

    /** Where a row has who, when and on what. */
    private record Row(String by, String at, String gauges) {}

    /** As the characteristic has it now; a gauge is any it was read with, what was struck out apart. */
    private static final Row CHARACTERISTIC = new Row(
            "c.\"by\"",
            "c.at",
            "SELECT c.gauge UNION ALL SELECT d.gauge FROM drawn_reading d WHERE d.run = c.run AND d.step = c.step"
                    + " AND d.struck IS NULL");

    /** As the reading has it, or the step where nothing was read. */
    private static final Row READING =
            new Row("coalesce(d.\"by\", c.\"by\")", "coalesce(d.at, c.at)", "iif(d.seq IS NULL, c.gauge, d.gauge)");

    /** What is said of runs alone. */
    static Narrowing ofRuns(Sought sought) {
        return of(sought, OF_RUNS, CHARACTERISTIC);
    }

    /** What is said of characteristics, whatever run they are of. */
    static Narrowing ofCharacteristics(Sought sought) {
        return of(sought, EnumSet.complementOf(EnumSet.copyOf(OF_RUNS)), CHARACTERISTIC);
    }

    /** All that is said, of single readings. */
    static Narrowing ofReadings(Sought sought) {
        return of(sought, EnumSet.allOf(SoughtBy.class), READING);
    }

    private static Narrowing of(Sought sought, Set<SoughtBy> some, Row row) {
        StringBuilder sql = new StringBuilder();
        List<Object> values = new ArrayList<>();
        for (Map.Entry<SoughtBy, String> one : sought.by().entrySet()) {
            if (some.contains(one.getKey())) {
                sql.append("AND ").append(condition(one.getKey(), row)).append(' ');
                values.add(Sought.value(one.getKey(), one.getValue()));
            }
        }
        return new Narrowing(sql.toString(), List.copyOf(values));
    }

    private static String condition(SoughtBy by, Row row) {
        return switch (by) {
            case PART_NUMBER -> "r.part = ?";
            case SERIAL -> "r.serial = ? COLLATE NOCASE";
            case LOT -> "r.lot = ? COLLATE NOCASE";
            case MACHINE -> "r.machine = ? COLLATE NOCASE";
            case KIND -> "r.purpose = ?";
            case VERDICT -> "c.verdict = ?";
            case CHARACTERISTIC -> "? COLLATE NOCASE IN (c.step || '', c.name)";
            case BALLOON -> "c.balloon = ? COLLATE NOCASE";
            case DESIGNATOR -> "c.designator = ? COLLATE NOCASE";
            case PERSON -> row.by() + " = ? COLLATE NOCASE";
            case GAUGE -> "? IN (" + row.gauges() + ")";
            case FROM -> "substr(" + row.at() + ", 1, 10) >= ?";
            case TO -> "substr(" + row.at() + ", 1, 10) <= ?";
        };
    }
}
