package org.tenthwise.app.store.sqlite;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.PartSize;
import org.tenthwise.app.history.ReadingSummary.GaugeMark;
import org.tenthwise.app.history.SizeSummary;
import org.tenthwise.app.history.SizeSummary.Bounds;
import org.tenthwise.app.history.SizeSummary.FollowedBy;
import org.tenthwise.app.history.StepSummary;
import org.tenthwise.app.history.StepSummary.Found;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * Reads what a series over parts needs, of many runs one after the other: what says the same from run to run, limits,
 * times, people and gauges, is made of its text once.
 */
final class PointReader {

    /** What is read after the beginning of the run, in this order. */
    static final String COLUMNS =
            """
            c.step, c.name, c.balloon, c.designator, c.class, c.unit, c.lower, c.upper, c.places, c.verdict, c.distance,
                c."limit", c.inside, c.value, c.disposition, c.signed_by, c."by", c.at, c.kind, c.gauge, c.asked,
            """
                    + SizeRows.COLUMNS;

    private final Map<String, Unit> units = new HashMap<>();
    private final Map<List<String>, Limits> limits = new HashMap<>();
    private final Map<String, OffsetDateTime> times = new HashMap<>();
    private final Map<String, List<String>> people = new HashMap<>();
    private final Map<String, List<GaugeMark>> gauges = new HashMap<>();

    /** The cells of a row, one after the other. */
    private static final class Cells {

        private final ResultSet row;
        private int at;

        Cells(ResultSet row, int before) {
            this.row = row;
            this.at = before;
        }

        String text() throws SQLException {
            return row.getString(++at);
        }

        Optional<String> some() throws SQLException {
            return Optional.ofNullable(text());
        }

        int number() throws SQLException {
            return row.getInt(++at);
        }

        long entry() throws SQLException {
            return row.getLong(++at);
        }

        boolean is() throws SQLException {
            return row.getBoolean(++at);
        }
    }

    /** What a step came to, and what a series needs of it. */
    record StepAndSize(StepSummary step, SizeSummary size) {}

    /** @param before how many columns stand before {@link #COLUMNS} */
    StepAndSize read(ResultSet row, int before) throws SQLException {
        Cells cells = new Cells(row, before);
        int number = cells.number();
        String name = cells.text();
        Optional<String> balloon = cells.some();
        Optional<String> designator = cells.some();
        StepClass stepClass = StepClass.valueOf(cells.text());
        String unit = cells.text();
        Limits within = limits(cells.some(), cells.some(), unit);
        QuantityKind kind = within.unit().kind();
        StepSummary step = new StepSummary(
                number,
                name,
                balloon,
                designator,
                stepClass,
                Optional.of(within),
                cells.number(),
                new Verdict(VerdictKind.valueOf(cells.text()), margin(cells, kind)),
                length(cells, kind),
                disposed(cells),
                found(cells),
                cells.is());
        return new StepAndSize(step, size(cells, kind));
    }

    private Limits limits(Optional<String> lower, Optional<String> upper, String unit) {
        return limits.computeIfAbsent(
                List.of(lower.orElse(""), upper.orElse(""), unit),
                same -> new Limits(
                        lower.map(text -> new Written(text, unit(unit))),
                        upper.map(text -> new Written(text, unit(unit)))));
    }

    private Unit unit(String symbol) {
        return units.computeIfAbsent(symbol, Unit::named);
    }

    private static Optional<Verdict.Margin> margin(Cells cells, QuantityKind kind) throws SQLException {
        Optional<Length> distance = length(cells, kind);
        Optional<String> from = cells.some();
        boolean inside = cells.is();
        return distance.map(far -> new Verdict.Margin(far, Limit.valueOf(from.orElseThrow()), inside));
    }

    private static Optional<StepSummary.Disposed> disposed(Cells cells) throws SQLException {
        Optional<String> disposition = cells.some();
        String signedBy = cells.text();
        return disposition.map(what -> new StepSummary.Disposed(Disposition.valueOf(what), signedBy));
    }

    private Optional<Found> found(Cells cells) throws SQLException {
        Optional<String> by = cells.some();
        Optional<String> at = cells.some();
        Optional<String> kind = cells.some();
        String mark = cells.text();
        return by.map(
                person -> new Found(person, time(at.orElseThrow()), kind.map(known -> new GaugeMark(known, mark))));
    }

    private SizeSummary size(Cells cells, QuantityKind kind) throws SQLException {
        return new SizeSummary(
                cells.number(),
                FollowedBy.valueOf(cells.text()),
                cells.text(),
                cells.text(),
                Bounds.valueOf(cells.text()),
                size(cells.text(), cells.text(), cells.text(), kind),
                size(cells.text(), cells.text(), cells.text(), kind),
                cells.number(),
                cells.is(),
                cells.is(),
                length(cells, kind),
                cells.entry(),
                time(cells.text()),
                cells.entry(),
                people.computeIfAbsent(cells.text(), text -> lines(text).toList()),
                gauges.computeIfAbsent(
                        cells.text(),
                        text -> lines(text).map(PointReader::gauge).toList()));
    }

    private OffsetDateTime time(String text) {
        return times.computeIfAbsent(text, OffsetDateTime::parse);
    }

    private static Optional<PartSize> size(String judged, String least, String greatest, QuantityKind kind) {
        if (judged == null) {
            return Optional.empty();
        }
        Length one = length(judged, kind);
        return Optional.of(
                least.equals(greatest)
                        ? new PartSize(one)
                        : new PartSize(one, length(least, kind), length(greatest, kind)));
    }

    private static Optional<Length> length(Cells cells, QuantityKind kind) throws SQLException {
        return cells.some().map(figure -> length(figure, kind));
    }

    private static Length length(String figure, QuantityKind kind) {
        return new Length(new BigDecimal(figure), kind);
    }

    private static Stream<String> lines(String text) {
        return text.isEmpty() ? Stream.empty() : Stream.of(text.split(SizeRows.LINE));
    }

    private static GaugeMark gauge(String line) {
        int gap = line.indexOf(' ');
        return new GaugeMark(line.substring(0, gap), line.substring(gap + 1));
    }
}
