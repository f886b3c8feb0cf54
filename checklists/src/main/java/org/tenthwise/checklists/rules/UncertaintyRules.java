package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/** {@code [[uncertainty]]}: how sure each way of measuring is, under a name that steps refer to. */
final class UncertaintyRules {

    static final String KEY = "uncertainty";
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
        Optional<Written> expanded = keys.size("expanded", unit);
        Optional<BigDecimal> factor = keys.ifAny(COVERAGE_FACTOR, keys::number);
        factor.filter(k -> k.signum() <= 0).ifPresent(k -> keys.problem(COVERAGE_FACTOR,
                "\"%s\" must be more than nought, not %s".formatted(COVERAGE_FACTOR, k.toPlainString())));
        keys.finish();
        return keys.built(() -> new Uncertainty(name.orElseThrow(), expanded.orElseThrow(), factor.orElse(TWO)));
    }
}
