package org.tenthwise.app.sums.decision;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.uncertainty.Budget;
import org.tenthwise.model.compute.uncertainty.Component;
import org.tenthwise.model.quantity.Unit;

/** An uncertainty from its components. */
final class UncertaintySum implements Sum {

    private static final int MOST_READINGS = 1_000_000;
    private static final Set<String> OF_A_COMPONENT = Set.of("kind", "value", "n", "k", "sensitivity");
    private static final Map<String, Function<SumInput, Component>> KINDS = Map.of(
            "resolution", given -> Component.resolution(alone(given).notNegative("value")),
            "rectangular", given -> Component.rectangular(alone(given).notNegative("value")),
            "triangular", given -> Component.triangular(alone(given).notNegative("value")),
            "normal",
                    given -> Component.normal(
                            without("n", given).notNegative("value"),
                            given.ifGiven("k", given::positive).orElse(BigDecimal.ONE)),
            "repeat", given -> Component.repeat(without("k", given).notNegative("value"), readings(given)));

    @Override
    public String name() {
        return "uncertainty";
    }

    @Override
    public Set<String> keys() {
        return Set.of("components", "coverage_factor");
    }

    @Override
    public SumResult of(SumInput given) {
        List<SumInput> tables = given.tables("components", OF_A_COMPONENT);
        Budget budget = Budget.of(SumInput.each("components", tables, UncertaintySum::component));
        Optional<BigDecimal> agreed = given.ifGiven("coverage_factor", given::positive);
        double factor =
                agreed.map(BigDecimal::doubleValue).orElse(budget.coverage().factor());
        SumResult.Writing answer = SumResult.in(given.unit().orElse(Unit.MILLIMETRE))
                .figure("standard", budget.standard())
                .figure("expanded", budget.expandedBy(factor))
                .figure("coverage_factor", factor);
        if (agreed.isPresent()) {
            answer.note(
                    "The coverage factor is the one given, %s; the next sentence is about the one chosen without it."
                            .formatted(agreed.get().toPlainString()));
        }
        notes(answer, budget, tables);
        tables.stream()
                .filter(table -> kind(table).equals("repeat"))
                .map(UncertaintySum::howRepeated)
                .distinct()
                .forEach(answer::note);
        if (of("resolution", tables) && of("repeat", tables)) {
            answer.note(
                    "Where the repeats were read from the same display, their scatter holds its resolution already: "
                            + "the larger of the two is enough.");
        }
        if (tables.stream().anyMatch(table -> kind(table).equals("normal") && !table.has("k"))) {
            answer.note("A normal component without k is taken as a standard uncertainty.");
        }
        return answer.on(
                "JCGM 100:2008 (GUM), 4.3, 5.1.2 and G; EA-4/02, S9 and S10, where rectangles outweigh the rest");
    }

    private static void notes(SumResult.Writing answer, Budget budget, List<SumInput> tables) {
        String factor = String.format(Locale.ROOT, "%.2f", budget.coverage().factor());
        switch (budget.coverage().rule()) {
            case USUAL_TWO ->
                answer.note(
                        tables.size() == 1
                                ? "Coverage factor 2, about 95 % for a spread like the normal distribution's: one "
                                        + "source counts, and it is no rectangle."
                                : "Coverage factor 2, about 95 %: no source is a rectangle that outweighs the rest, "
                                        + "and none rests on too few readings.");
            case FEW_READINGS ->
                answer.note(
                        ("Coverage factor %s, the t factor for 95.45 %%: few readings leave ten effective degrees of "
                                        + "freedom or fewer.")
                                .formatted(factor));
            case ONE_RECTANGLE ->
                answer.note("Coverage factor %s for 95 %%: one rectangle outweighs the rest.".formatted(factor));
            case TWO_RECTANGLES ->
                answer.note(
                        "Coverage factor %s for 95 %%: two rectangles together outweigh the rest.".formatted(factor));
        }
        budget.effectiveDegreesOfFreedom()
                .ifPresent(degrees ->
                        answer.note(String.format(Locale.ROOT, "Effective degrees of freedom: %.1f.", degrees)));
    }

    private static Component component(SumInput given) {
        Component component = given.choice("kind", KINDS).apply(given);
        return given.ifGiven("sensitivity", given::figure).map(component::times).orElse(component);
    }

    private static String howRepeated(SumInput repeat) {
        int n = readings(repeat);
        return n == 1
                ? "A repeat with n = 1 is the scatter of one reading, known well from before: it has no degrees of "
                        + "freedom of its own."
                : ("A repeat with n = %d is the scatter of single readings, %d of them averaged: divided by √%d, "
                                + "with %d degrees of freedom.")
                        .formatted(n, n, n, n - 1);
    }

    private static int readings(SumInput repeat) {
        return repeat.ifGiven("n", key -> repeat.whole(key, 1, MOST_READINGS)).orElse(1);
    }

    private static boolean of(String kind, List<SumInput> tables) {
        return tables.stream().anyMatch(table -> kind(table).equals(kind));
    }

    private static String kind(SumInput table) {
        return table.text("kind");
    }

    private static SumInput alone(SumInput given) {
        return without("n", without("k", given));
    }

    private static SumInput without(String key, SumInput given) {
        if (given.has(key)) {
            throw new CannotAnswer(
                    key,
                    "%s %s does not go with kind %s: k belongs to normal, n to repeat"
                            .formatted(key, given.text(key), given.text("kind")));
        }
        return given;
    }
}
