package org.tenthwise.app.ui.plan;

import java.time.Clock;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.editing.AnswersAlike;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.ReadyValues;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.checklists.editing.ValueText;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.words.Words;

/** One step of a plan: what is missing first, then what it says, then what it could say besides. */
public final class PlanStepViewModel {

    private static final List<NamedKey> ALWAYS = List.of(
            NamedKey.REQUIREMENT,
            NamedKey.BALLOON,
            NamedKey.NAME,
            NamedKey.OPERATION,
            NamedKey.KIND,
            NamedKey.METHOD,
            NamedKey.CAUTION,
            NamedKey.HOLD,
            NamedKey.CLASS,
            NamedKey.SHEET,
            NamedKey.DRAWING_ZONE,
            NamedKey.DESIGNATOR,
            NamedKey.COUNT,
            NamedKey.AT);
    /** Of what is measured. */
    private static final List<NamedKey> MEASURED = List.of(
            NamedKey.PLACES,
            NamedKey.READINGS_EACH,
            NamedKey.GAUGE_KIND,
            NamedKey.GAUGE,
            NamedKey.CUT_AGAIN,
            NamedKey.AIM,
            NamedKey.CLAMPING);

    /** Why a line of a list became no check. */
    private static final String REFUSED = "refused";

    private final String name;
    private final PlanInHand plan;
    private final int place;
    private final Navigator navigator;
    private final String title;
    private final boolean wasOpen;
    private final Words words;
    private final List<AnswersAlike.Answers> alike;
    private final TableForm form;

    public PlanStepViewModel(String name, PlanInHand plan, int place, Words words, Navigator navigator, Clock clock) {
        this.name = name;
        this.plan = plan;
        this.place = place;
        this.navigator = navigator;
        TableText step = plan.steps().get(place);
        title = words.say(
                        "planning.step",
                        step.value("number").orElse(""),
                        step.says("name").orElse(""))
                .strip();
        wasOpen = plan.openSteps().contains(place);
        this.words = words;
        List<String> missing = missing(step);
        alike = new AnswersAlike(plan.text()).of(place, missing);
        form = new TableForm(step, asked(step, missing), ready(), words, clock, words.say("planning.keep"), this::keep);
        step.says(REFUSED)
                .or(() -> step.says("requirement"))
                .ifPresent(form.form().aboutProperty()::set);
        String about = String.join("\n", about(step));
        form.form().fields().forEach(field -> field.aboutProperty().set(about));
    }

    private List<String> missing(TableText step) {
        return step.says(REFUSED).isPresent()
                ? Stream.concat(Stream.of(NamedKey.REQUIREMENT.key()), plan.missing(place).stream())
                        .distinct()
                        .toList()
                : plan.missing(place);
    }

    /**
     * What the drawing asks, and why it was refused or, with nothing missing, what is wrong: both are seen while it is
     * answered.
     */
    private List<String> about(TableText step) {
        Stream<String> wrong =
                step.says(REFUSED).isPresent() || !plan.missing(place).isEmpty()
                        ? step.says(REFUSED).stream()
                        : plan.open().stream()
                                .filter(point -> point.step().equals(OptionalInt.of(place)))
                                .filter(point -> point.missing().isEmpty())
                                .map(point -> words.say(point.problem().what()));
        return Stream.concat(step.says("requirement").stream(), wrong)
                .distinct()
                .toList();
    }

    /** Checks like this one, whose answers can be taken by one tap. */
    private List<TableForm.Ready> ready() {
        return alike.stream()
                .map(answers -> new TableForm.Ready(
                        words.say(
                                "planning.as.row",
                                answers.step().value("number").orElse(""),
                                answers.step()
                                        .says("requirement")
                                        .or(() -> answers.step().says("name"))
                                        .orElseGet(() -> words.say("planning.unnamed")),
                                words.list(answers.values().values().stream()
                                        .map(ValueText::reads)
                                        .toList())),
                        answers.values()))
                .toList();
    }

    private List<TableForm.Asked> asked(TableText step, List<String> missing) {
        Set<String> keys = new LinkedHashSet<>(missing);
        keys.addAll(NamedKey.keys(ALWAYS));
        keys.addAll(step.keys());
        if (step.value("places").isPresent() || step.value("gauge_kind").isPresent() || keys.contains("places")) {
            keys.addAll(NamedKey.keys(MEASURED));
        }
        keys.remove("number");
        keys.remove(REFUSED);
        ReadyValues ready = new ReadyValues(plan.text());
        return keys.stream()
                .map(key -> new TableForm.Asked(
                        key,
                        missing.contains(key),
                        Stream.of(
                                        alike.stream().flatMap(answers -> answers.values().entrySet().stream()
                                                .filter(answer ->
                                                        answer.getKey().equals(key))
                                                .map(Map.Entry::getValue)),
                                        usualMethod(key),
                                        ready.of(key, place).stream(),
                                        usualPlaces(key))
                                .flatMap(Function.identity())
                                .distinct()
                                .toList()))
                .toList();
    }

    /** With the gauge of this check, before what other checks say of theirs; common practice. */
    private Stream<String> usualMethod(String key) {
        return key.equals(NamedKey.METHOD.key())
                ? new AnswersAlike(plan.text())
                        .gauge(place).stream()
                                .flatMap(gauge -> GaugeKind.KNOWN.stream()
                                        .filter(kind -> kind.key().equals(gauge)))
                                .map(kind -> words.say("planning.method.usual", GaugeWords.kind(words, kind)))
                                .map(TomlValue::text)
                : Stream.empty();
    }

    /** Where things are usually read; common practice. */
    private Stream<String> usualPlaces(String key) {
        return key.equals(NamedKey.PLACES.key())
                ? Stream.of(
                                words.say("planning.places.two-ways"),
                                words.say("planning.places.two-ends"),
                                words.say("planning.places.both"),
                                words.say("planning.places.one"))
                        .map(places -> ValueText.written(key, places))
                : Stream.empty();
    }

    public String title() {
        return title;
    }

    public FormViewModel form() {
        return form.form();
    }

    /**
     * Whoever keeps a refused line has read why, and said what is right. Where something was open, it goes on to the
     * next step where something is; this one again while it is.
     */
    private void keep(UnaryOperator<TableText> change) {
        int now = plan.answer(
                place, step -> change.apply(step).without(REFUSED), number -> words.say("planning.operation", number));
        navigator.back();
        if (wasOpen) {
            List<Integer> openSteps = plan.openSteps();
            Stream.concat(
                            openSteps.stream().filter(open -> open == now),
                            openSteps.stream().filter(open -> open >= place))
                    .findFirst()
                    .ifPresent(next -> navigator.planStep(name, plan, next));
        }
    }
}
