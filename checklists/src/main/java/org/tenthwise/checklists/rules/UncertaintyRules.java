package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.compute.uncertainty.Stated;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/** {@code [[uncertainty]]}: how sure each way of measuring is, under a name that steps refer to. */
final class UncertaintyRules {

    static final String KEY = "uncertainty";
    private static final String EXPANDED = "expanded";
    private static final String COVERAGE_FACTOR = "coverage_factor";
    private static final BigDecimal TWO = new BigDecimal(2);

    private UncertaintyRules() {}

    /** By name; absent behind a name where a problem was noted. */
    static Map<String, Optional<Uncertainty>> read(TableKeys plan, Unit unit) {
        Map<String, Optional<Uncertainty>> byName = new LinkedHashMap<>();
        for (RawTable table :
                plan.ifAny(KEY, key -> Optional.of(plan.tables(key))).orElse(List.of())) {
            TableKeys keys = plan.inside(KEY, table);
            Optional<String> name = keys.text("name");
            Optional<Uncertainty> found = read(keys, name, unit);
            name.filter(known -> byName.putIfAbsent(known, found) != null)
                    .ifPresent(twice -> keys.problem("name", "plan.uncertainty.twice", twice));
        }
        return byName;
    }

    /** The one a step names, of lengths or of angles as its gauges read. */
    static Optional<Uncertainty> named(TableKeys keys, Map<String, Optional<Uncertainty>> known, QuantityKind reads) {
        return named(keys, KEY, known, reads);
    }

    /** The same of a key of another name. */
    static Optional<Uncertainty> named(
            TableKeys keys, String under, Map<String, Optional<Uncertainty>> known, QuantityKind reads) {
        return keys.ifAny(under, key -> {
            if (!known.isEmpty()) {
                Optional<Uncertainty> named = keys.word(key, List.copyOf(known.keySet()), name -> name)
                        .flatMap(known::get);
                Optional<Uncertainty> fitting =
                        named.filter(of -> of.expanded().unit().kind().equals(reads));
                if (named.isPresent() && fitting.isEmpty()) {
                    keys.problem(key, "plan.uncertainty.other-kind", named.get().name(), reads);
                }
                return fitting;
            }
            keys.text(key).ifPresent(name -> keys.problem(key, "plan.uncertainty.unknown", name));
            return Optional.empty();
        });
    }

    private static Optional<Uncertainty> read(TableKeys keys, Optional<String> name, Unit ofThePlan) {
        Unit unit = keys.ifAny(ScaleKind.UNIT, key -> ScaleKind.read(keys)).orElse(ofThePlan);
        Optional<Uncertainty> found =
                keys.has(BudgetRules.COMPONENTS) ? worked(keys, name, unit) : given(keys, name, unit);
        keys.finish();
        return keys.built(found::orElseThrow);
    }

    private static Optional<Uncertainty> given(TableKeys keys, Optional<String> name, Unit unit) {
        if (!keys.has(EXPANDED)) {
            keys.problem(keys.spot(), "plan.uncertainty.missing");
        }
        Optional<Written> expanded =
                keys.ifAny(EXPANDED, key -> keys.size(key, keys.isAngle(key) ? Unit.MINUTE_OF_ARC : unit));
        BigDecimal factor = keys.ifAny(COVERAGE_FACTOR, keys::number).orElse(TWO);
        if (factor.signum() <= 0) {
            keys.problem(COVERAGE_FACTOR, "plan.above-zero", COVERAGE_FACTOR, factor);
        }
        return keys.built(() -> new Uncertainty(name.orElseThrow(), expanded.orElseThrow(), factor));
    }

    private static Optional<Uncertainty> worked(TableKeys keys, Optional<String> name, Unit unit) {
        for (String both : List.of(EXPANDED, COVERAGE_FACTOR)) {
            keys.ifAny(both, key -> {
                keys.problem(key, "plan.uncertainty.worked", key);
                return Optional.empty();
            });
        }
        Optional<Stated> stated = BudgetRules.read(keys);
        return keys.built(() -> new Uncertainty(
                name.orElseThrow(),
                Written.of(stated.orElseThrow().expanded(), unit),
                stated.get().coverageFactor()));
    }
}
