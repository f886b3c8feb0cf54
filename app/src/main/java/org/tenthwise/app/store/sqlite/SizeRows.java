package org.tenthwise.app.store.sqlite;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.app.history.PartSize;
import org.tenthwise.app.history.ReadingSummary.GaugeMark;
import org.tenthwise.app.history.SizeSummary;
import org.tenthwise.app.history.SizeSummary.Bounds;
import org.tenthwise.app.history.SizeSummary.FollowedBy;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.QuantityKind;

/** Rows of what a series over parts needs of a step, written and read. */
final class SizeRows {

    /** The columns of a size {@code s}. */
    static final String COLUMNS =
            """
            s.operation, s.followed_by, s.kind, s.requirement, s.bounds, s.cut, s.cut_least, s.cut_greatest, s.size, s.least,
                s.greatest, s.cuts, s.far_off, s.conceded, s.expanded, s.entry, s.at, s.last_entry, s.people, s.gauges
            """;

    private static final String LINE = "\n";

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

    /**
     * The size that begins at a column of {@code row}, in the order of {@link #COLUMNS}.
     *
     * @param kind of the limits
     */
    static SizeSummary read(ResultSet row, int first, QuantityKind kind) throws SQLException {
        int at = first;
        return new SizeSummary(
                row.getInt(at++),
                FollowedBy.valueOf(row.getString(at++)),
                row.getString(at++),
                row.getString(at++),
                Bounds.valueOf(row.getString(at++)),
                sized(row.getString(at++), row.getString(at++), row.getString(at++), kind),
                sized(row.getString(at++), row.getString(at++), row.getString(at++), kind),
                row.getInt(at++),
                row.getBoolean(at++),
                row.getBoolean(at++),
                Optional.ofNullable(row.getString(at++)).map(figure -> length(figure, kind)),
                row.getLong(at++),
                OffsetDateTime.parse(row.getString(at++)),
                row.getLong(at++),
                lines(row.getString(at++)).toList(),
                lines(row.getString(at)).map(SizeRows::gauge).toList());
    }

    private static Optional<PartSize> sized(String judged, String least, String greatest, QuantityKind kind) {
        if (judged == null) {
            return Optional.empty();
        }
        Length one = length(judged, kind);
        return Optional.of(
                least.equals(greatest)
                        ? new PartSize(one)
                        : new PartSize(one, length(least, kind), length(greatest, kind)));
    }

    private static Length length(String figure, QuantityKind kind) {
        return new Length(new BigDecimal(figure), kind);
    }

    private static Stream<String> lines(String text) {
        return text.isEmpty() ? Stream.empty() : Stream.of(text.split(LINE));
    }

    private static GaugeMark gauge(String line) {
        int gap = line.indexOf(' ');
        return new GaugeMark(line.substring(0, gap), line.substring(gap + 1));
    }
}
