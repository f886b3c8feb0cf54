package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.SectionSlots;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.record.TemperatureEffect;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Word;

/**
 * One pass of a step: temperatures, readings, answers. Each stands there alone, or as a table that says more of it:
 * that it is meant although far off, that it was struck out, in which unit it was read. What was struck out takes no
 * place: the next one takes it.
 */
final class SamplePass {

    private static final String READINGS = "readings";
    private static final String FAR = "far";
    private static final String ANSWERS = "answers";
    private static final String READING = "reading";
    private static final String ANSWER = "answer";
    private static final String STRUCK = "struck";
    private static final Map<MeasuredBody, String> TEMPERATURES =
            Map.of(MeasuredBody.PART, "part_temperature", MeasuredBody.GAUGE, "gauge_temperature");

    private final TableKeys pass;
    private final Step step;
    private final Plan plan;
    private final SampleGauges gauges;
    private final SampleEvents events;

    SamplePass(TableKeys pass, Step step, Plan plan, SampleGauges gauges, SampleEvents events) {
        this.pass = pass;
        this.step = step;
        this.plan = plan;
        this.gauges = gauges;
        this.events = events;
    }

    void read() {
        temperatures();
        Check check = step.check();
        check.asTurn().ifPresentOrElse(turn -> turns(turn.bySection()), () -> {
            if (check.isMeasured()) {
                readings(pass, check.slots());
            }
        });
        if (check.asDocument().isPresent()) {
            new SampleDocument(plan, step).readIn(pass, events);
        }
        if (!check.questions().isEmpty()) {
            pass.ifAny(ANSWERS, pass::list).ifPresent(list -> answers(list.items(), check.questions()));
        }
    }

    /**
     * Of a run-out: a full turn at every section, then the readings by angle. Those of the second section stand in a
     * table.
     */
    private void turns(List<SectionSlots> sections) {
        List<TableKeys> places = new ArrayList<>(List.of(pass));
        if (sections.size() > 1) {
            pass.ifAny(FAR, pass::table).ifPresent(table -> places.add(pass.inside(FAR, table)));
        }
        for (int i = 0; i < places.size(); i++) {
            TableKeys keys = places.get(i);
            sweep(keys, RunOutCheck.HIGHEST, sections.get(i).highest());
            sweep(keys, RunOutCheck.LOWEST, sections.get(i).lowest());
        }
        for (int i = 0; i < places.size(); i++) {
            readings(places.get(i), sections.get(i).byAngle());
        }
        places.stream().skip(1).forEach(TableKeys::finish);
    }

    private void sweep(TableKeys keys, String key, Slot slot) {
        keys.ifAny(key, keys::any).ifPresent(value -> readings(keys, key, items(value), List.of(slot)));
    }

    private void readings(TableKeys keys, List<Slot> slots) {
        keys.ifAny(READINGS, keys::list).ifPresent(list -> readings(keys, READINGS, list.items(), slots));
    }

    /** One value, or several in a list of which all but the last were struck out. */
    private static List<RawValue> items(RawValue value) {
        return value instanceof RawList list ? list.items() : List.of(value);
    }

    private void readings(TableKeys keys, String key, List<RawValue> items, List<Slot> slots) {
        int taken = 0;
        for (RawValue item : items) {
            if (item instanceof RawTable table && !table.values().containsKey(READING)) {
                anotherGauge(keys, key, table);
                continue;
            }
            if (taken < slots.size() && reading(keys, item, slots.get(taken))) {
                continue;
            }
            taken++;
        }
        if (taken > slots.size()) {
            keys.problem(key, "readings.too-many", taken, slots.size());
        }
    }

    /** @return whether it was struck out, so that its place is still free */
    private boolean reading(TableKeys where, RawValue item, Slot slot) {
        if (!(item instanceof RawTable table)) {
            QuotedFigures.figure(where, item, plan.unit(step, slot))
                    .ifPresent(typed -> events.add(new StepEvent.ReadingTaken(step.number(), slot.key(), typed)));
            return false;
        }
        TableKeys keys = where.inside(READING, table);
        QuotedFigures.figure(keys, READING, QuotedFigures.unit(keys, plan.unit(step, slot)))
                .ifPresent(typed -> events.add(new StepEvent.ReadingTaken(step.number(), slot.key(), typed)));
        return more(keys);
    }

    /** What a table says of the event added last; whether it was struck out. */
    private boolean more(TableKeys keys) {
        if (keys.ifAny(SampleGauges.KEEP, keys::truth).orElse(false)) {
            events.lastIsMeant();
        }
        Optional<String> struck = keys.ifAny(STRUCK, keys::prose);
        struck.ifPresent(events::strikeLast);
        keys.finish();
        return keys.has(STRUCK);
    }

    private void anotherGauge(TableKeys where, String key, RawTable table) {
        Optional<Check.Means> means = step.check().means();
        if (means.isEmpty() || !table.values().containsKey(SampleGauges.GAUGE)) {
            where.problem(
                    table.spot(),
                    means.isEmpty() ? "plan.key.missing" : "readings.table",
                    means.isEmpty() ? READING : key);
            return;
        }
        TableKeys keys = where.inside(Message.of("readings.in.another-gauge"), table);
        gauges.setting(keys, means.get(), plan.unit(step)).ifPresent(laid -> events.set(step.number(), laid));
        keys.finish();
    }

    /** Those of part and gauge, where the plan has them asked for. */
    private void temperatures() {
        boolean needed = TemperatureEffect.isNeeded(plan, step);
        for (MeasuredBody body : MeasuredBody.values()) {
            String key = TEMPERATURES.get(body);
            pass.ifAny(key, pass::any).ifPresent(value -> items(value).forEach(item -> temperature(body, key, item)));
            if (pass.has(key) && !needed) {
                pass.problem(key, "readings.no-temperature");
            }
        }
    }

    private TemperatureScale scale() {
        return plan.climate().map(ThermalData::scale).orElse(TemperatureScale.CELSIUS);
    }

    private void temperature(MeasuredBody body, String key, RawValue item) {
        if (!(item instanceof RawTable table)) {
            QuotedFigures.degrees(pass, key, item, scale())
                    .ifPresent(read -> events.add(new StepEvent.TemperatureTaken(step.number(), body, read)));
            return;
        }
        TableKeys keys = pass.inside(key, table);
        keys.any(READING)
                .flatMap(value -> QuotedFigures.degrees(keys, READING, value, scale()))
                .ifPresent(read -> events.add(new StepEvent.TemperatureTaken(step.number(), body, read)));
        more(keys);
    }

    private void answers(List<RawValue> items, List<Question> questions) {
        int taken = 0;
        for (RawValue item : items) {
            if (taken < questions.size() && answer(item, questions.get(taken))) {
                continue;
            }
            taken++;
        }
        if (taken > questions.size()) {
            pass.problem(ANSWERS, "readings.answers", taken, questions.size());
        }
    }

    /** @return whether it was struck out, so that the question is still to be answered */
    private boolean answer(RawValue item, Question question) {
        if (!(item instanceof RawTable table)) {
            answered(pass, item, question);
            return false;
        }
        TableKeys keys = pass.inside(ANSWER, table);
        keys.any(ANSWER).ifPresent(value -> answered(keys, value, question));
        Optional<String> struck = keys.ifAny(STRUCK, keys::prose);
        struck.ifPresent(events::strikeLast);
        keys.finish();
        return keys.has(STRUCK);
    }

    private void answered(TableKeys keys, RawValue item, Question question) {
        Optional<Answer> answer = question.answers().stream()
                .filter(possible ->
                        item instanceof RawValue.Text text && text.text().equals(word(question, possible)))
                .findFirst();
        if (answer.isEmpty()) {
            keys.problem(
                    item.spot(),
                    question == Question.NOT_GO_STAYS_OUT ? "readings.answer.not-go" : "readings.answer",
                    TableKeys.quoted(question.answers().stream()
                            .map(possible -> word(question, possible))
                            .toList()));
        }
        answer.ifPresent(given -> events.add(new StepEvent.Answered(step.number(), question, given)));
    }

    /** What the not-go end does has words of its own: "no" was once the good answer there. */
    private static String word(Question question, Answer answer) {
        return question != Question.NOT_GO_STAYS_OUT ? Word.of(answer) : answer == Answer.YES ? "stays-out" : "enters";
    }
}
