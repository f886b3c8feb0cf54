package org.tenthwise.app.export;

import static org.tenthwise.app.export.CsvColumn.*;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Body;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.PlugFinding;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.verdict.Verdict;

/** One row of the table in the making. */
final class CsvRow {

    /** Where a remark goes, by its kind. */
    private static final Map<String, CsvColumn> COLUMNS = Map.of("doubt", DOUBT, "note", NOTE, "cut-on-these", CUT_ON_THESE);

    private final Map<CsvColumn, String> cells;
    private final Unit unit;
    private final int places;

    /** @param places those the sizes of the characteristic are known to */
    private CsvRow(Map<CsvColumn, String> cells, Unit unit, int places) {
        this.cells = new EnumMap<>(cells);
        this.unit = unit;
        this.places = places;
    }

    /** Every row of the record, in the order of the plan. */
    static List<CsvRow> of(Evidence evidence) {
        CsvRow run = new CsvRow(new EnumMap<>(CsvColumn.class), evidence.sheet().plan().unit(), 0).run(evidence);
        List<CsvRow> rows = new ArrayList<>();
        for (Line line : evidence.sheet().lines()) {
            CsvRow characteristic = run.under(line);
            List<CsvRow> taken = new ArrayList<>();
            for (Attempt attempt : Attempt.of(evidence.sheet().run(), line)) {
                CsvRow pass = characteristic.copy().pass(attempt);
                if (attempt.pass().number() == line.passes().size()) {
                    pass.disposed(line);
                }
                attempt.pass().temperatures().forEach(temperature -> taken.add(pass.copy().temperature(attempt, temperature)));
                attempt.pass().readings().forEach(reading -> taken.add(pass.copy().reading(attempt, reading)));
                attempt.pass().answers().forEach(answering -> taken.add(pass.copy().answer(attempt, answering)));
            }
            rows.addAll(taken.isEmpty() ? List.of(characteristic.copy().finding(line.finding()).disposed(line)) : taken);
            rows.addAll(remarks(evidence, line.step().number(), characteristic));
        }
        rows.addAll(remarks(evidence, 0, run));
        return rows;
    }

    private static List<CsvRow> remarks(Evidence evidence, int step, CsvRow beginning) {
        return Remark.of(evidence.sheet().run()).stream().filter(remark -> remark.step() == step).map(remark -> {
            CsvRow row = beginning.copy();
            row.text(COLUMNS.get(remark.kind()), remark.words());
            return row.entry(remark.entry().seq(), remark.entry().by(), remark.entry().at(), Optional.empty());
        }).toList();
    }

    List<String> cells() {
        return Arrays.stream(CsvColumn.values()).map(column -> cells.getOrDefault(column, "")).toList();
    }

    private CsvRow copy() {
        return new CsvRow(cells, unit, places);
    }

    private CsvRow run(Evidence evidence) {
        Plan plan = evidence.sheet().plan();
        Event.Begun begun = evidence.sheet().run().begun();
        text(PART, begun.part().number());
        text(REVISION, begun.part().revision());
        text(SERIAL, begun.serial());
        text(LOT, begun.noLot() ? "none" : begun.lot());
        text(MACHINE, begun.machine());
        text(RUN, evidence.sheet().run().id());
        text(OUTCOME, Codes.of(evidence.sheet().outcome()));
        text(SIGNATURES, evidence.sheet().run().signatures().stream().map(signature -> signature(signature, evidence.sheet())).collect(Collectors.joining("; ")));
        text(REMARK, plan.remark());
        text(PLAN_ISSUE, plan.issue());
        text(PLAN_SHA256, begun.plan().sha256());
        number(RUN_ENTRIES, BigDecimal.valueOf(evidence.head().place()));
        number(LAST_ENTRY, BigDecimal.valueOf(evidence.head().seq()));
        text(RUN_HASH, evidence.head().hash());
        text(TOOL, evidence.tool());
        return this;
    }

    /** A refusal after which something was changed and that nobody has overcome since is not called lapsed. */
    private static String signature(Signature signature, Sheet sheet) {
        String said = signature.meaning() == SignedAs.OTHER ? signature.words() : signature.meaning().word();
        boolean gone = signature.lapsed() && !sheet.against().contains(signature);
        return "%s by %s%s".formatted(said, signature.signedBy(), gone ? " (lapsed)" : "");
    }

    private CsvRow under(Line line) {
        Step step = line.step();
        CsvRow row = new CsvRow(cells, StepFigures.limits(step).map(limits -> limits.unit()).orElse(unit),
                StepFigures.limits(step).isEmpty() ? 0 : StepFigures.of(line.finding()).places());
        row.number(NUMBER, BigDecimal.valueOf(step.number()));
        row.text(CHARACTERISTIC, step.name());
        row.text(CHECK, Codes.of(step.check()));
        row.text(CLASS, Codes.of(step.stepClass()));
        step.clamping().ifPresent(clamping -> row.text(CLAMPING, clamping.key()));
        if (step.check() instanceof Check.RunOut runOut && runOut.holding() != Holding.UNSAID) {
            row.text(HOLDING, runOut.holding().key());
        }
        row.number(OPERATION, BigDecimal.valueOf(step.operation()));
        row.text(REPAIRED, line.repaired() ? "yes" : "");
        StepFigures.limits(step).ifPresent(limits -> {
            row.text(UNIT, row.unit.symbol());
            limits.lower().ifPresent(lower -> row.number(LOWER_LIMIT, lower.figure()));
            limits.upper().ifPresent(upper -> row.number(UPPER_LIMIT, upper.figure()));
            limits.origin().ifPresent(origin -> {
                row.text(LIMITS_OF, origin.designation());
                row.text(LIMITS_BY, origin.standard());
            });
        });
        if (step.check() instanceof Check.OfSize size) {
            row.number(GUARD_BAND, size.guardBand().figure());
        }
        step.check().means().flatMap(Check.Means::uncertainty).ifPresent(uncertainty -> {
            row.number(UNCERTAINTY, uncertainty.expanded().figure());
            row.number(COVERAGE_FACTOR, uncertainty.coverageFactor());
            row.text(UNCERTAINTY_OF, uncertainty.name());
        });
        return row;
    }

    /** What was signed for the pass in hand; an earlier pass had another size. */
    private CsvRow disposed(Line line) {
        line.disposed().ifPresent(disposed -> {
            text(DISPOSITION, Codes.of(disposed.disposition()));
            text(DISPOSITION_REASON, disposed.reason());
            text(DISPOSITION_SIGNED_BY, disposed.signedBy());
            disposed.document().ifPresent(number -> text(DISPOSITION_NUMBER, number));
        });
        return this;
    }

    private CsvRow pass(Attempt attempt) {
        number(PASS, BigDecimal.valueOf(attempt.pass().number()));
        attempt.pass().why().ifPresent(why -> text(PASS_BEGUN_FOR, Codes.of(why)));
        attempt.finding().ifPresent(this::finding);
        return this;
    }

    private CsvRow finding(Finding finding) {
        Verdict verdict = finding.verdict();
        text(VERDICT, Codes.of(verdict.standing()));
        Codes.judgedBy(finding.step().check()).ifPresent(what -> text(JUDGED_BY, what));
        if (finding.step().check() instanceof Check.OfSize size) {
            size.drawingSays().ifPresent(modifier -> text(MODIFIER, modifier.name()));
        }
        StepFigures.value(finding).ifPresent(value -> size(JUDGED, value));
        if (finding instanceof PlugFinding plug) {
            plug.clearance().ifPresent(clearance -> {
                size(LEAST, clearance.least());
                size(GREATEST, clearance.greatest());
            });
        }
        verdict.margin().ifPresent(margin -> {
            size(DISTANCE, margin.inside() ? margin.distance() : margin.distance().negated());
            text(FROM_LIMIT, Codes.of(margin.limit()));
        });
        return this;
    }

    private CsvRow reading(Attempt attempt, Run.Reading reading) {
        Slot slot = attempt.slot(reading);
        text(PLACE, slot.place().name());
        number(REPEAT, BigDecimal.valueOf(slot.repeat()));
        if (attempt.step().check() instanceof Check.RunOut runOut) {
            runOut.section(slot).ifPresent(section -> {
                text(SECTION, section.name());
                number(FROM_JAWS, section.at().figure());
            });
        }
        number(READING, reading.typed().figure());
        text(READING_UNIT, reading.typed().unit().symbol());
        if (attempt.counts(reading)) {
            attempt.measured(reading).ifPresent(measured -> {
                int known = StepFigures.of(attempt.finding().orElseThrow(), measured).places();
                size(CORRECTION, measured.correction(), known);
                size(SIZE, measured.value(), known);
                measured.forContact().ifPresent(correction -> size(CONTACT_CORRECTION, correction, known));
                measured.forTemperature().ifPresent(correction -> heat(attempt, correction, known));
            });
            text(PLACE_VERDICT, attempt.standing(reading).map(Codes::of).orElse("together"));
        } else {
            text(TAKEN_AGAIN, reading.struck().isEmpty() ? "yes" : "");
        }
        reading.setting().ifPresent(this::setting);
        return entry(reading.entry().seq(), reading.entry().by(), reading.entry().at(), reading.struck());
    }

    private void heat(Attempt attempt, Length correction, int known) {
        size(TEMPERATURE_CORRECTION, correction, known);
        attempt.warmth().ifPresent(warmth -> {
            warmth.part().ifPresent(part -> number(PART_TEMPERATURE, part.figure()));
            warmth.gauge().ifPresent(gauge -> number(GAUGE_TEMPERATURE, gauge.figure()));
            TemperatureScale scale = warmth.climate().scale();
            text(DEGREES, scale.symbol());
            number(PART_EXPANSION, scale.perDegree(warmth.climate().part().expansion()));
            text(PART_EXPANSION_FROM, warmth.climate().part().source());
            number(GAUGE_EXPANSION, scale.perDegree(warmth.climate().gauge().expansion()));
            text(GAUGE_EXPANSION_FROM, warmth.climate().gauge().source());
        });
    }

    /** A temperature has a row of its own, as it is an entry of its own. */
    private CsvRow temperature(Attempt attempt, Run.Temperature temperature) {
        number(temperature.of() == Body.PART ? PART_TEMPERATURE : GAUGE_TEMPERATURE, temperature.read().figure());
        text(DEGREES, temperature.read().scale().symbol());
        text(TAKEN_AGAIN, temperature.struck().isEmpty() && !attempt.counts(temperature) ? "yes" : "");
        return entry(temperature.entry().seq(), temperature.entry().by(), temperature.entry().at(), temperature.struck());
    }

    private CsvRow answer(Attempt attempt, Run.Answering answering) {
        text(QUESTION, Codes.of(answering.question()));
        text(ANSWER, Codes.of(answering.answer()));
        attempt.setting(answering).ifPresent(this::setting);
        text(TAKEN_AGAIN, answering.struck().isEmpty() && !attempt.counts(answering) ? "yes" : "");
        return entry(answering.entry().seq(), answering.entry().by(), answering.entry().at(), answering.struck());
    }

    private CsvRow entry(long seq, String by, OffsetDateTime at, Optional<Run.Struck> struck) {
        number(ENTRY, BigDecimal.valueOf(seq));
        text(PERSON, by);
        time(TIME, at);
        struck.ifPresent(out -> {
            text(STRUCK_OUT, out.reason());
            text(STRUCK_OUT_BY, out.entry().by());
            time(STRUCK_OUT_AT, out.entry().at());
        });
        return this;
    }

    private void setting(Setting setting) {
        text(GAUGE, setting.gauge().id());
        text(GAUGE_KIND, setting.gauge().kind().key());
        setting.reference().ifPresent(reference -> text(SET_ON, reference));
        setting.certified().ifPresent(certified -> {
            number(CERTIFIED, certified.figure());
            text(CERTIFIED_UNIT, certified.unit().symbol());
        });
        setting.zero().ifPresent(zero -> {
            number(ZERO, zero.figure());
            text(ZERO_UNIT, zero.unit().symbol());
        });
        setting.gauge().sense().ifPresent(sense -> text(SENSE, Codes.of(sense)));
    }

    private void text(CsvColumn column, String text) {
        cells.put(column, CsvText.safe(text));
    }

    private void size(CsvColumn column, Length length) {
        size(column, length, places);
    }

    private void size(CsvColumn column, Length length, int known) {
        number(column, WorkedOut.figure(length, unit, known));
    }

    private void number(CsvColumn column, BigDecimal number) {
        cells.put(column, number.toPlainString());
    }

    private void time(CsvColumn column, OffsetDateTime time) {
        cells.put(column, time.truncatedTo(ChronoUnit.MILLIS).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME));
    }
}
