package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;

/** A step as it is put together: what is not said is as in a plan that does not say it. */
public final class StepBuilder {

    private final int number;
    private final int operation;
    private final String name;
    private OnDrawing drawing = OnDrawing.NOTHING;
    private String method = "";
    private Optional<String> caution = Optional.empty();
    private List<Integer> hold = List.of();
    private Optional<Mark> mark = Optional.empty();
    private Check check;
    private TemperatureAsked temperatureAsked = TemperatureAsked.NEVER;
    private StepClass stepClass;
    private Optional<Clamping> clamping = Optional.empty();
    private Optional<WhenAsked> when = Optional.empty();

    /** Of the usual class of {@code check}, and asking for no temperature. */
    public StepBuilder(int number, int operation, String name, Check check) {
        this.number = number;
        this.operation = operation;
        this.name = name;
        this.check = check;
        this.stepClass = check.usualClass();
    }

    /** As {@code step} is. */
    public StepBuilder(Step step) {
        this(step.number(), step.operation(), step.name(), step.check());
        this.drawing = step.drawing();
        this.method = step.method();
        this.caution = step.caution();
        this.hold = step.hold();
        this.mark = step.mark();
        this.temperatureAsked = step.temperatureAsked();
        this.stepClass = step.stepClass();
        this.clamping = step.clamping();
        this.when = step.when();
    }

    public StepBuilder drawing(OnDrawing said) {
        this.drawing = said;
        return this;
    }

    public StepBuilder method(String words) {
        this.method = words;
        return this;
    }

    public StepBuilder caution(Optional<String> words) {
        this.caution = words;
        return this;
    }

    public StepBuilder hold(List<Integer> steps) {
        this.hold = steps;
        return this;
    }

    public StepBuilder mark(Optional<Mark> at) {
        this.mark = at;
        return this;
    }

    /** Another check; the class stays. */
    public StepBuilder check(Check other) {
        this.check = other;
        return this;
    }

    public StepBuilder temperatureAsked(TemperatureAsked when) {
        this.temperatureAsked = when;
        return this;
    }

    public StepBuilder stepClass(StepClass kind) {
        this.stepClass = kind;
        return this;
    }

    public StepBuilder clamping(Optional<Clamping> held) {
        this.clamping = held;
        return this;
    }

    public StepBuilder when(Optional<WhenAsked> pieces) {
        this.when = pieces;
        return this;
    }

    public Step build() {
        return new Step(
                number,
                operation,
                name,
                drawing,
                method,
                caution,
                hold,
                mark,
                check,
                temperatureAsked,
                stepClass,
                clamping,
                when);
    }
}
