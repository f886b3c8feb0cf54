package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.GaugeAbility;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Written;

/** The gauge a step is measured with: one of the kinds that can make the reading, with a master where it needs one. */
final class MeansRules {

    private static final String GAUGE_KIND = "gauge_kind";
    private static final String MASTER = "master";

    private MeansRules() {}

    /**
     * Of lengths.
     *
     * @param readings words for what is read, the one for a person first: "bore"
     */
    static Optional<Check.Means> read(TableKeys keys, PlanSoFar soFar, List<String> readings) {
        return read(keys, soFar, readings, QuantityKind.LENGTH);
    }

    static Optional<Check.Means> read(TableKeys keys, PlanSoFar soFar, List<String> readings, QuantityKind reads) {
        Optional<GaugeAbility> named =
                keys.word(GAUGE_KIND, soFar.gauges(), ability -> ability.kind().key());
        Optional<String> gauge = keys.ifAny("gauge", keys::text);
        Optional<Written> master = keys.ifAny(MASTER, key -> keys.size(key, soFar.unit()));
        Optional<Uncertainty> uncertainty = UncertaintyRules.named(keys, soFar.uncertainties(), reads);
        named.filter(ability -> !ability.canMake(readings))
                .ifPresent(ability -> keys.problem(
                        GAUGE_KIND,
                        "plan.means.cannot-read",
                        ability.kind().key(),
                        readings.get(0),
                        TableKeys.quoted(able(soFar, readings))));
        named.filter(ability -> ability.canMake(readings)).ifPresent(ability -> judgeMaster(keys, ability.kind()));
        return named.map(ability -> new Check.Means(ability.kind(), gauge, master, uncertainty, ability.resolution()));
    }

    /**
     * One that can make the first of several readings has to make all of them; noted where it cannot.
     *
     * @param readings words for what is read, one kind of check each
     */
    static void readsToo(TableKeys keys, PlanSoFar soFar, Optional<Check.Means> means, List<String> readings) {
        List<String> all = soFar.gauges().stream()
                .filter(ability -> readings.stream().allMatch(one -> ability.canMake(List.of(one))))
                .map(ability -> ability.kind().key())
                .toList();
        means.map(known -> known.kind().key())
                .filter(key -> !all.contains(key))
                .ifPresent(key -> keys.problem(
                        GAUGE_KIND,
                        "plan.means.cannot-read",
                        key,
                        readings.get(readings.size() - 1),
                        TableKeys.quoted(all)));
    }

    private static List<String> able(PlanSoFar soFar, List<String> readings) {
        return soFar.gauges().stream()
                .filter(ability -> ability.canMake(readings))
                .map(ability -> ability.kind().key())
                .toList();
    }

    private static void judgeMaster(TableKeys keys, GaugeKind kind) {
        boolean compares = kind.reference() == GaugeKind.Reference.MASTER;
        if (compares && !keys.has(MASTER)) {
            keys.problem(GAUGE_KIND, "plan.means.no-master", kind.key());
        } else if (!compares && keys.has(MASTER)) {
            keys.problem(MASTER, "plan.means.master", kind.key());
        }
    }
}
