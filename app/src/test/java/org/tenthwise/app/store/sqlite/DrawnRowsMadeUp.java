package org.tenthwise.app.store.sqlite;

import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.stream.IntStream;

/** Rows of invented parts in the drawn tables, without the entries they would come from. */
final class DrawnRowsMadeUp {

    private static final OffsetDateTime BEGUN = OffsetDateTime.parse("2026-03-02T07:15:00+01:00");
    private static final int ENTRIES_A_PART = 1000;
    private static final int PARTS_A_TOOL = 40;

    private DrawnRowsMadeUp() {}

    /** Hash of a plan that is kept nowhere. */
    static final String PLAN = "ab".repeat(32);

    /** One closed run, with a note of a new tool every forty parts. */
    static void part(Statements statements, String number, int part, IntStream characteristics) throws SQLException {
        long begun = (long) part * ENTRIES_A_PART;
        String serial = "%04d".formatted(part);
        OffsetDateTime at = BEGUN.plusHours(part);
        DigestRows.put(
                statements,
                """
                drawn_run (begun, run, part, revision, serial, lot, machine, plan, begun_at, "by", people, last, last_at,
                    worked, issue, in_hand, outcome, concessions, contested, open, closed_by, closed_as, purpose)
                """,
                begun,
                number + "-" + serial,
                number,
                "A",
                serial,
                "L-1",
                "Lathe 4",
                PLAN,
                at,
                "Setter 1",
                "Setter 1\nInspector 1",
                begun + ENTRIES_A_PART - 1,
                at.plusMinutes(50),
                at.plusMinutes(50).toEpochSecond(),
                "1",
                1,
                "CONFORMS",
                0,
                0,
                0,
                "Inspector 1",
                "accepted",
                "NOT_STATED");
        if (part % PARTS_A_TOOL == 0) {
            DigestRows.put(statements, "drawn_tool", begun + 1, begun, 0, "Insert changed or indexed");
        }
        for (int step : characteristics.toArray()) {
            characteristic(statements, begun, part, step, at.plusSeconds(10L * step));
        }
    }

    private static void characteristic(Statements statements, long begun, int part, int step, OffsetDateTime at)
            throws SQLException {
        int thousandths = 5 + part % PARTS_A_TOOL / 4 + (part * 31 + step * 17) % 7;
        String size = "%d.%03d".formatted(10 + step, thousandths);
        DigestRows.put(
                statements,
                """
                drawn_characteristic (run, step, place, name, balloon, class, lower, upper, unit, places, verdict,
                    distance, "limit", inside, value, "by", at, kind, gauge, asked)
                """,
                begun,
                step,
                step,
                "Diameter " + step,
                String.valueOf(step),
                "DRAWING",
                "%d.000".formatted(10 + step),
                "%d.025".formatted(10 + step),
                "mm",
                3,
                "PASS",
                "0.00" + thousandths % 10,
                "LOWER",
                1,
                size,
                "Setter 1",
                at,
                "micrometer",
                "MC-" + step % 7,
                1);
        DigestRows.put(
                statements,
                "drawn_size",
                begun,
                step,
                10,
                "BALLOON",
                "diameter",
                "Ø%d +0.025/0".formatted(10 + step),
                "PLAIN",
                size,
                size,
                size,
                size,
                size,
                size,
                0,
                0,
                0,
                "0.002",
                begun + 2 * step,
                at,
                begun + 2 * step,
                "Setter 1",
                "micrometer MC-" + step % 7);
    }
}
