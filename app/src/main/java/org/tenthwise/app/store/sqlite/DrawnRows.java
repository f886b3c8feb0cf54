package org.tenthwise.app.store.sqlite;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.history.Matter;
import org.tenthwise.app.history.MatterKind;
import org.tenthwise.app.history.ReadingSummary;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.StepSummary;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/** Rows of the drawn tables, read as they were written. */
final class DrawnRows {

    /** Behind an angle that was read. */
    static final String SECONDS = "\u2033";

    /** The columns of a run {@code r}, of a step {@code c} of it, and of a reading {@code d} at that step. */
    static final String RUN =
            """
            SELECT r.begun, r.run, r.part, r.revision, r.serial, r.lot, r.machine, r.plan, r.begun_at, r."by", r.people,
                r.last, r.last_at, r.issue, r.in_hand, r.outcome, r.concessions, r.contested, r.closed_by,
                r.closed_as, r.purpose, r.piece
            """;

    private static final String OF_A_STEP =
            """
            c.step AS step, c.name AS step_name, c.balloon, c.designator, c.class, c.lower, c.upper, c.unit AS step_unit, c.places,
                c.verdict AS step_verdict, c.distance, c."limit", c.inside, c.value AS step_value, c.disposition,
                c.signed_by, c."by" AS found_by, c.at AS found_at, c.kind AS found_kind, c.gauge AS found_gauge, c.asked
            """;

    static final String STEP = "SELECT " + OF_A_STEP;

    static final String RUN_AND_STEP = RUN + ", " + OF_A_STEP;

    /** Of a reading, but for its step; to stand behind what else is asked for. */
    static final String AND_READING =
            """
            , d.seq, d.pass, d.replaced, d.place, d.repeat, d.figure, d.unit AS reading_unit, d.value AS reading_value, d.places AS reading_places,
                d.verdict AS reading_verdict, d.kind, d.gauge, d."by" AS read_by, d.at AS read_at, d.struck
            """;

    private DrawnRows() {}

    static RunFacts run(ResultSet row) throws SQLException {
        Optional<String> outcome = text(row, "outcome");
        String people = row.getString("people");
        return new RunFacts(
                row.getLong("begun"),
                row.getString("run"),
                row.getString("part"),
                row.getString("revision"),
                row.getString("serial"),
                row.getString("lot"),
                row.getString("machine"),
                row.getString("plan"),
                OffsetDateTime.parse(row.getString("begun_at")),
                row.getString("by"),
                people.isEmpty() ? List.of() : List.of(people.split("\n")),
                row.getLong("last"),
                OffsetDateTime.parse(row.getString("last_at")),
                outcome.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new RunFacts.Stand(
                                row.getString("issue"),
                                row.getInt("in_hand"),
                                Outcome.valueOf(outcome.get()),
                                row.getLong("concessions"),
                                row.getBoolean("contested"))),
                row.getString("closed_by") != null
                        ? Optional.of(new RunFacts.Closing(row.getString("closed_by"), row.getString("closed_as")))
                        : Optional.empty(),
                new RunFacts.Kind(
                        Purpose.valueOf(row.getString("purpose")),
                        text(row, "piece").map(Integer::valueOf)));
    }

    static Matter matter(ResultSet row) throws SQLException {
        return new Matter(
                MatterKind.valueOf(row.getString("matter")),
                row.getInt("check"),
                row.getString("about"),
                row.getString("number"),
                row.getString("matter_by"),
                OffsetDateTime.parse(row.getString("since")));
    }

    static StepSummary step(ResultSet row) throws SQLException {
        Optional<String> unit = text(row, "step_unit");
        Optional<String> disposition = text(row, "disposition");
        Optional<String> foundBy = text(row, "found_by");
        return new StepSummary(
                row.getInt("step"),
                row.getString("step_name"),
                text(row, "balloon"),
                text(row, "designator"),
                StepClass.valueOf(row.getString("class")),
                unit.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new Limits(
                                written(text(row, "lower"), unit.get()), written(text(row, "upper"), unit.get()))),
                row.getInt("places"),
                new Verdict(VerdictKind.valueOf(row.getString("step_verdict")), margin(row)),
                text(row, "step_value").map(base -> length(base, unit.orElseThrow())),
                disposition.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new StepSummary.Disposed(
                                Disposition.valueOf(disposition.get()), row.getString("signed_by"))),
                foundBy.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new StepSummary.Found(
                                foundBy.get(),
                                OffsetDateTime.parse(row.getString("found_at")),
                                gauge(row, "found_kind", "found_gauge"))),
                row.getBoolean("asked"));
    }

    private static Optional<Verdict.Margin> margin(ResultSet row) throws SQLException {
        Optional<String> distance = text(row, "distance");
        return distance.isEmpty()
                ? Optional.empty()
                : Optional.of(new Verdict.Margin(
                        length(distance.get(), row.getString("step_unit")),
                        Limit.valueOf(row.getString("limit")),
                        row.getBoolean("inside")));
    }

    static ReadingSummary reading(ResultSet row) throws SQLException {
        String unit = row.getString("reading_unit");
        String ofTheSize = text(row, "step_unit").orElse(unit);
        return new ReadingSummary(
                row.getLong("seq") % KeptEntries.MOST_ENTRIES, // that of the ledger it is from
                row.getInt("step"),
                row.getInt("pass"),
                row.getBoolean("replaced"),
                row.getString("place"),
                row.getInt("repeat"),
                new Written(row.getString("figure"), unit(unit)),
                text(row, "reading_value").map(base -> read(base, ofTheSize)),
                row.getInt("reading_places"),
                text(row, "reading_verdict").map(VerdictKind::valueOf),
                gauge(row, "kind", "gauge"),
                row.getString("read_by"),
                OffsetDateTime.parse(row.getString("read_at")),
                text(row, "struck"));
    }

    private static Optional<ReadingSummary.GaugeMark> gauge(ResultSet row, String kind, String mark)
            throws SQLException {
        Optional<String> key = text(row, kind);
        String marked = row.getString(mark);
        return key.map(of -> new ReadingSummary.GaugeMark(of, marked));
    }

    private static Optional<String> text(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getString(column));
    }

    private static Optional<Written> written(Optional<String> figure, String unit) {
        return figure.map(text -> new Written(text, unit(unit)));
    }

    private static Unit unit(String symbol) {
        return Unit.named(symbol);
    }

    /** @param unit of the limits, or of the reading, which is of the same kind where the figure has no mark */
    private static Length read(String figure, String unit) {
        return figure.endsWith(SECONDS)
                ? Length.of(figure.substring(0, figure.length() - SECONDS.length()), Unit.SECOND_OF_ARC)
                : length(figure, unit);
    }

    /** @param unit of the limits */
    private static Length length(String base, String unit) {
        return new Length(new BigDecimal(base), unit(unit).kind());
    }
}
