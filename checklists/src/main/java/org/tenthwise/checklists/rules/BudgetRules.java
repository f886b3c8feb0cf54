package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.compute.uncertainty.Budget;
import org.tenthwise.model.compute.uncertainty.Component;
import org.tenthwise.model.compute.uncertainty.Stated;
import org.tenthwise.model.words.Message;

/** {@code components}: the sources an uncertainty is put together from, each with its kind and its size. */
final class BudgetRules {

    static final String COMPONENTS = "components";

    /** What a component is known by. */
    private enum Kind {
        RESOLUTION,
        RECTANGULAR,
        TRIANGULAR,
        NORMAL,
        REPEAT;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private BudgetRules() {}

    static Optional<Stated> read(TableKeys uncertainty) {
        List<Component> components = new ArrayList<>();
        int before = uncertainty.problemCount();
        for (RawTable table : uncertainty.tables(COMPONENTS)) {
            component(uncertainty.inside(Message.of("plan.in.component"), table))
                    .ifPresent(components::add);
        }
        return uncertainty.problemCount() > before
                ? Optional.empty()
                : uncertainty.sensible(COMPONENTS, () -> Stated.of(Budget.of(components)));
    }

    private static Optional<Component> component(TableKeys keys) {
        Optional<Kind> kind = keys.word("kind", List.of(Kind.values()), Kind::word);
        Optional<BigDecimal> value = keys.number("value");
        Optional<BigDecimal> factor = keys.ifAny("k", keys::number);
        Optional<Integer> repeats = keys.ifAny("n", keys::whole);
        BigDecimal sensitivity = keys.ifAny("sensitivity", keys::number).orElse(BigDecimal.ONE);
        kind.ifPresent(known -> {
            belongs(keys, "k", known, Kind.NORMAL);
            belongs(keys, "n", known, Kind.REPEAT);
        });
        keys.finish();
        return keys.built(kind::orElseThrow)
                .flatMap(known -> keys.sensible("value", () -> component(known, value.orElseThrow(), factor, repeats)
                        .times(sensitivity)));
    }

    private static void belongs(TableKeys keys, String key, Kind kind, Kind owner) {
        if (keys.has(key) && kind != owner) {
            keys.problem(key, "plan.budget.goes-with", key, owner.word());
        }
    }

    private static Component component(
            Kind kind, BigDecimal value, Optional<BigDecimal> factor, Optional<Integer> repeats) {
        return switch (kind) {
            case RESOLUTION -> Component.resolution(value);
            case RECTANGULAR -> Component.rectangular(value);
            case TRIANGULAR -> Component.triangular(value);
            case NORMAL -> Component.normal(value, factor.orElse(BigDecimal.ONE));
            case REPEAT -> Component.repeat(value, repeats.orElse(1));
        };
    }
}
