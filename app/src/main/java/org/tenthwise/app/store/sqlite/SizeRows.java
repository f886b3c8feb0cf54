package org.tenthwise.app.store.sqlite;

import java.sql.SQLException;
import java.util.stream.Collectors;
import org.tenthwise.app.history.PartSize;
import org.tenthwise.app.history.SizeSummary;

/** Rows of what a series over parts needs of a step, written. */
final class SizeRows {

    /** The columns of a size {@code s}. */
    static final String COLUMNS =
            """
            s.operation, s.followed_by, s.kind, s.requirement, s.bounds, s.cut, s.cut_least, s.cut_greatest, s.size, s.least,
                s.greatest, s.cuts, s.far_off, s.conceded, s.expanded, s.entry, s.at, s.last_entry, s.people, s.gauges
            """;

    static final String LINE = "\n";

    private SizeRows() {}

    /** @param behind what the places of the entries are counted from, of a run that came in */
    static void write(Statements statements, long run, int step, SizeSummary size, long behind) throws SQLException {
        DigestRows.put(
                statements,
                "drawn_size",
                run,
                step,
                size.operation(),
                size.followedBy(),
                size.kind(),
                size.requirement(),
                size.bounds(),
                size.asCut().map(PartSize::judged).map(DigestRows::figure),
                size.asCut().map(PartSize::least).map(DigestRows::figure),
                size.asCut().map(PartSize::greatest).map(DigestRows::figure),
                size.last().map(PartSize::judged).map(DigestRows::figure),
                size.last().map(PartSize::least).map(DigestRows::figure),
                size.last().map(PartSize::greatest).map(DigestRows::figure),
                size.cuts(),
                size.farOff(),
                size.conceded(),
                size.expanded().map(DigestRows::figure),
                behind + size.entry(),
                size.at(),
                behind + size.lastEntry(),
                String.join(LINE, size.people()),
                size.gauges().stream()
                        .map(gauge -> gauge.kind() + " " + gauge.mark())
                        .collect(Collectors.joining(LINE)));
    }
}
