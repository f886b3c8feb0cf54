package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.compute.uncertainty.Stated;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/** {@code [[uncertainty]]}: how sure each way of measuring is, under a name that steps refer to. */
final class UncertaintyRules {

    static final String KEY = "uncertainty";
    private static final String EXPANDED = "expanded";
    private static final String COVERAGE_FACTOR = "coverage_factor";
    private static final BigDecimal TWO = new BigDecimal(2);

    private UncertaintyRules() {
    }

    /** Those that are sound, by name. */
    static Map<String, Uncertainty> read(Keys plan, Unit unit) {
        Map<String, Uncertainty> byName = new LinkedHashMap<>();
        plan.ifAny(KEY, key -> Optional.of(plan.tables(key))).ifPresent(tables -> tables.forEach(table -> read(plan, table, unit)
                .filter(found -> byName.putIfAbsent(found.name(), found) != null)
                .ifPresent(twice -> plan.problem(table.spot(), "uncertainty \"%s\" is there already".formatted(twice.name())))));
        return byName;
    }

    /** The one a step names. */
    static Optional<Uncertainty> named(Keys keys, Map<String, Uncertainty> known) {
        if (!keys.has(KEY)) {
            return keys.ifAny(KEY, key -> Optional.empty());
        }
        if (known.isEmpty()) {
            return keys.ifAny(KEY, keys::text).flatMap(name -> {
                keys.problem(KEY, "there is no uncertainty \"%s\": the plan has no [[uncertainty]]".formatted(name));
                return Optional.empty();
            });
        }
        return keys.word(KEY, List.copyOf(known.values()), Uncertainty::name);
    }

    private static Optional<Uncertainty> read(Keys plan, RawTable table, Unit unit) {
        Keys keys = plan.inside(KEY, table);
        Optional<String> name = keys.text("name");
        Optional<Uncertainty> found = keys.has(BudgetRules.COMPONENTS) ? worked(keys, name, unit) : given(keys, name, unit);
        keys.finish();
        return keys.built(found::orElseThrow);
    }

    private static Optional<Uncertainty> given(Keys keys, Optional<String> name, Unit unit) {
        Optional<Written> expanded = keys.size(EXPANDED, unit);
        BigDecimal factor = keys.ifAny(COVERAGE_FACTOR, keys::number).orElse(TWO);
        if (factor.signum() <= 0) {
            keys.problem(COVERAGE_FACTOR, "\"%s\" must be more than nought, not %s".formatted(COVERAGE_FACTOR, factor.toPlainString()));
        }
        return keys.built(() -> new Uncertainty(name.orElseThrow(), expanded.orElseThrow(), factor));
    }

    private static Optional<Uncertainty> worked(Keys keys, Optional<String> name, Unit unit) {
        for (String both : List.of(EXPANDED, COVERAGE_FACTOR)) {
            keys.ifAny(both, key -> {
                keys.problem(key, "\"%s\" stands beside \"%s\", which it follows from; leave one of them out".formatted(key,
                        BudgetRules.COMPONENTS));
                return Optional.empty();
            });
        }
        Optional<Stated> stated = BudgetRules.read(keys);
        return keys.built(() -> new Uncertainty(name.orElseThrow(), Written.of(stated.orElseThrow().expanded(), unit),
                stated.get().coverageFactor()));
    }
}
