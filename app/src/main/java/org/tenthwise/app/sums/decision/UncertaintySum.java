package org.tenthwise.app.sums.decision;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.uncertainty.Budget;
import org.tenthwise.model.compute.uncertainty.Component;
import org.tenthwise.model.words.Message;

/** An uncertainty from its components. */
public final class UncertaintySum implements Sum {

    /** What is known of a component. */
    public enum ComponentKind {
        RESOLUTION,
        RECTANGULAR,
        TRIANGULAR,
        NORMAL,
        REPEAT
    }

    private static final int MOST_READINGS = 1_000_000;

    public static final Input<ComponentKind> KIND = Input.choice("kind", ComponentKind.values());
    public static final Input<BigDecimal> VALUE = Input.notNegative("value");
    public static final Input<Integer> N = Input.whole("n", 1, MOST_READINGS).usually("1");
    public static final Input<BigDecimal> K = Input.positive("k").usually("1");
    public static final Input<BigDecimal> SENSITIVITY =
            Input.figure("sensitivity").usually("1");
    public static final Input<List<SumInput>> COMPONENTS = Input.tables("components", KIND, VALUE, N, K, SENSITIVITY);
    public static final Input<BigDecimal> COVERAGE_FACTOR =
            Input.positive("coverage_factor").optional();
    public static final Output<Double> STANDARD = Output.figure("standard");
    public static final Output<Double> EXPANDED = Output.figure("expanded");
    public static final Output<Double> COVERAGE_FACTOR_USED = Output.figure("coverage_factor");
    private static final SumDescription DESCRIPTION = SumDescription.named("uncertainty")
            .takes(COMPONENTS, COVERAGE_FACTOR)
            .gives(STANDARD, EXPANDED, COVERAGE_FACTOR_USED);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        List<SumInput> tables = given.get(COMPONENTS);
        Budget budget = Budget.of(SumInput.each(COMPONENTS, tables, UncertaintySum::component));
        Optional<BigDecimal> agreed = given.find(COVERAGE_FACTOR);
        double factor =
                agreed.map(BigDecimal::doubleValue).orElse(budget.coverage().factor());
        SumResult.Writing answer = DESCRIPTION
                .in(given.anyUnit())
                .put(STANDARD, budget.standard())
                .put(EXPANDED, budget.expandedBy(factor))
                .put(COVERAGE_FACTOR_USED, factor);
        if (agreed.isPresent()) {
            answer.note("agreed", agreed.get());
        }
        notes(answer, budget, tables);
        tables.stream()
                .filter(table -> table.get(KIND) == ComponentKind.REPEAT)
                .map(UncertaintySum::howRepeated)
                .distinct()
                .forEach(answer::note);
        if (of(ComponentKind.RESOLUTION, tables) && of(ComponentKind.REPEAT, tables)) {
            answer.note("same-display");
        }
        if (tables.stream().anyMatch(table -> table.get(KIND) == ComponentKind.NORMAL && !table.has(K))) {
            answer.note("no-k");
        }
        return answer.done();
    }

    private static void notes(SumResult.Writing answer, Budget budget, List<SumInput> tables) {
        String factor = String.format(Locale.ROOT, "%.2f", budget.coverage().factor());
        switch (budget.coverage().rule()) {
            case USUAL_TWO -> answer.note(tables.size() == 1 ? "two-one" : "two");
            case FEW_READINGS -> answer.note("few", factor);
            case ONE_RECTANGLE -> answer.note("rectangle", factor);
            case TWO_RECTANGLES -> answer.note("rectangles", factor);
        }
        budget.effectiveDegreesOfFreedom()
                .ifPresent(degrees -> answer.note("degrees", String.format(Locale.ROOT, "%.1f", degrees)));
    }

    private static Component component(SumInput given) {
        Component component =
                switch (given.get(KIND)) {
                    case RESOLUTION -> Component.resolution(alone(given).get(VALUE));
                    case RECTANGULAR -> Component.rectangular(alone(given).get(VALUE));
                    case TRIANGULAR -> Component.triangular(alone(given).get(VALUE));
                    case NORMAL ->
                        Component.normal(
                                without(N, given).get(VALUE), given.find(K).orElse(BigDecimal.ONE));
                    case REPEAT -> Component.repeat(without(K, given).get(VALUE), readings(given));
                };
        return given.find(SENSITIVITY).map(component::times).orElse(component);
    }

    private static Message howRepeated(SumInput repeat) {
        int n = readings(repeat);
        return n == 1 ? DESCRIPTION.said("repeated-once") : DESCRIPTION.said("repeated", n, n - 1);
    }

    private static int readings(SumInput repeat) {
        return repeat.find(N).orElse(1);
    }

    private static boolean of(ComponentKind kind, List<SumInput> tables) {
        return tables.stream().anyMatch(table -> table.get(KIND) == kind);
    }

    private static SumInput alone(SumInput given) {
        return without(N, without(K, given));
    }

    private static SumInput without(Input<?> other, SumInput given) {
        if (given.has(other)) {
            throw new CannotAnswer(other, Message.of("given.not-of-kind", other, given.text(other), given.text(KIND)));
        }
        return given;
    }
}
