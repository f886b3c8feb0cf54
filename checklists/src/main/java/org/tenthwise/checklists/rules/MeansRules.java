package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.quantity.Written;

/** The gauge a step is measured with: one of the kinds that can make the reading, with a master where it needs one. */
final class MeansRules {

    private static final String GAUGE_KIND = "gauge_kind";
    private static final String MASTER = "master";

    private MeansRules() {}

    /**
     * @param reading what is read: "bore"
     * @param able kinds that can read it, one at least
     */
    static Optional<Check.Means> read(TableKeys keys, PlanSoFar soFar, String reading, List<GaugeKind> able) {
        Optional<GaugeKind> kind = keys.word(GAUGE_KIND, List.of(GaugeKind.values()), GaugeKind::key);
        Optional<String> gauge = keys.ifAny("gauge", keys::text);
        Optional<Written> master = keys.ifAny(MASTER, key -> keys.size(key, soFar.unit()));
        Optional<Uncertainty> uncertainty =
                UncertaintyRules.named(keys, soFar.uncertainties(), able.get(0).reads());
        kind.filter(k -> !able.contains(k))
                .ifPresent(k -> keys.problem(
                        GAUGE_KIND,
                        "plan.means.cannot-read",
                        k.key(),
                        reading,
                        TableKeys.quoted(able.stream().map(GaugeKind::key).toList())));
        kind.filter(able::contains).ifPresent(k -> judgeMaster(keys, k));
        return kind.map(k -> new Check.Means(k, gauge, master, uncertainty));
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
