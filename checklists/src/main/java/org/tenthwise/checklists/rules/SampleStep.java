package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Body;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.Warmth;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;

/** What a readings file has for one step: the gauge as set, earlier passes, the last pass with its temperatures, remarks, a concession. */
final class SampleStep {

    private static final String READINGS = "readings";
    private static final String ANSWERS = "answers";
    private static final String PASS = "pass";
    private static final Map<Body, String> TEMPERATURES = Map.of(Body.PART, "part_temperature", Body.GAUGE, "gauge_temperature");

    private final Keys keys;
    private final Step step;
    private final Plan plan;
    private final Unit unit;

    SampleStep(Keys keys, Step step, Plan plan) {
        this.keys = keys;
        this.step = step;
        this.plan = plan;
        this.unit = plan.unit();
    }

    List<Event> read(SampleGauges gauges) {
        int number = step.number();
        List<Event> events = new ArrayList<>();
        step.check().means().flatMap(means -> gauges.setting(keys, means, unit))
                .ifPresent(setting -> events.add(new Event.GaugeSet(number, setting)));
        List<RawTable> earlier = keys.has(PASS) ? keys.tables(PASS) : List.of();
        for (RawTable table : earlier) {
            Keys pass = keys.inside(PASS, table);
            events.addAll(readingsAndAnswers(pass));
            pass.word("why", Stream.of(Event.PassBegun.Why.values()).filter(Event.PassBegun.Why::isSaid).toList(), SampleStep::word)
                    .ifPresent(why -> events.add(new Event.PassBegun(number, why)));
            pass.finish();
        }
        keys.ifAny(PASS, key -> Optional.empty());
        events.addAll(readingsAndAnswers(keys));
        keys.ifAny("doubt", keys::prose).ifPresent(words -> events.add(new Event.DoubtFlagged(number, words)));
        keys.ifAny("note", keys::prose).ifPresent(words -> events.add(new Event.NoteMade(number, words)));
        keys.ifAny("concession", keys::table)
                .flatMap(table -> concession(keys.inside("concession", table))).ifPresent(events::add);
        keys.finish();
        return events;
    }

    private List<Event> readingsAndAnswers(Keys pass) {
        Check check = step.check();
        List<Event> events = new ArrayList<>(temperatures(pass));
        if (!check.slots().isEmpty()) {
            pass.ifAny(READINGS, pass::list).ifPresent(list -> events.addAll(readings(pass, list)));
        }
        if (check instanceof Check.RunOut runOut) {
            for (Slot slot : runOut.sweepSlots()) {
                pass.ifAny(slot.key(), key -> Typed.figure(pass, key, unit)).ifPresent(typed ->
                        events.add(new Event.ReadingTaken(step.number(), slot.key(), typed)));
            }
            if (pass.has(READINGS) && (pass.has(Check.RunOut.HIGHEST) || pass.has(Check.RunOut.LOWEST))) {
                pass.problem(READINGS, "give the readings at the angles, or \"highest\" and \"lowest\", not both");
            }
        }
        if (!check.questions().isEmpty()) {
            pass.ifAny(ANSWERS, pass::list).ifPresent(list -> events.addAll(answers(pass, list)));
        }
        return events;
    }

    private List<Event> readings(Keys pass, RawList list) {
        List<Slot> slots = step.check().slots();
        List<Event> events = new ArrayList<>();
        if (list.items().size() > slots.size()) {
            pass.problem(READINGS, "%d readings, and the plan has room for %d".formatted(list.items().size(), slots.size()));
        }
        for (int i = 0; i < Math.min(slots.size(), list.items().size()); i++) {
            String slot = slots.get(i).key();
            Typed.figure(pass, list.items().get(i), unit)
                    .ifPresent(typed -> events.add(new Event.ReadingTaken(step.number(), slot, typed)));
        }
        return events;
    }

    /** Those of part and gauge, where the plan has them asked for. */
    private List<Event> temperatures(Keys pass) {
        List<Event> events = new ArrayList<>();
        boolean needed = Warmth.isNeeded(plan, step);
        for (Body body : Body.values()) {
            String key = TEMPERATURES.get(body);
            pass.ifAny(key, named -> Typed.celsius(pass, named)).ifPresent(read ->
                    events.add(new Event.TemperatureTaken(step.number(), body, read)));
            if (pass.has(key) && !needed) {
                pass.problem(key, "the plan has no temperature asked for here");
            }
        }
        return events;
    }

    private List<Event> answers(Keys pass, RawList list) {
        List<Question> questions = step.check().questions();
        List<Event> events = new ArrayList<>();
        if (list.items().size() > questions.size()) {
            pass.problem(ANSWERS, "%d answers to %d question%s".formatted(
                    list.items().size(), questions.size(), questions.size() == 1 ? "" : "s"));
        }
        for (int i = 0; i < Math.min(questions.size(), list.items().size()); i++) {
            Question question = questions.get(i);
            answer(pass, question, list.items().get(i))
                    .ifPresent(answer -> events.add(new Event.Answered(step.number(), question, answer)));
        }
        return events;
    }

    private static Optional<Answer> answer(Keys pass, Question question, RawValue item) {
        Optional<Answer> answer = question.answers().stream()
                .filter(possible -> item instanceof RawValue.Text text && text.text().equals(word(possible))).findFirst();
        if (answer.isEmpty()) {
            pass.problem(item.spot(), "an answer here is one of %s".formatted(
                    Keys.listed(question.answers().stream().map(SampleStep::word).toList())));
        }
        return answer;
    }

    private Optional<Event> concession(Keys concession) {
        Optional<String> by = concession.text("by");
        Optional<String> reason = concession.prose("reason");
        concession.finish();
        return concession.built(() -> new Event.Disposed(step.number(), Disposition.USE_AS_IS, reason.orElseThrow(),
                by.orElseThrow()));
    }

    /** The name in small letters, hyphens between its words. */
    private static String word(Enum<?> thing) {
        return thing.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
