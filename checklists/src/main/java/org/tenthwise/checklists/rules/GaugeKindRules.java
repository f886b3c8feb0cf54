package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.gauge.GaugeAbility;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Message;

/** {@code [[gauge_kind]]}: kinds of gauge of a shop's own, and how finely the known ones are read there. */
final class GaugeKindRules {

    private static final String KEY = "gauge_kind";
    private static final String NAME = "name";
    private static final String MAKES = "makes";
    private static final String ON_MASTER = "set_on_master";
    private static final String TOUCHES = "touches";
    private static final String RESOLUTION = "resolution";
    private static final int TWO = 2;

    private GaugeKindRules() {}

    /** Those that are known everywhere, each as fine as the plan says, and the plan's own behind them. */
    static List<GaugeAbility> read(TableKeys plan, Unit unit) {
        List<GaugeAbility> all = new ArrayList<>(GaugeAbility.KNOWN);
        Set<String> named = new LinkedHashSet<>();
        for (RawTable table :
                plan.ifAny(KEY, key -> Optional.of(plan.tables(key))).orElse(List.of())) {
            TableKeys unnamed = plan.inside(KEY, table);
            Optional<String> name = unnamed.text(NAME);
            TableKeys keys = name.map(of -> unnamed.about(Message.of("plan.in.gauge-kind", of)))
                    .orElse(unnamed);
            name.filter(twice -> !named.add(twice))
                    .ifPresent(twice -> keys.problem(NAME, "plan.gauge-kind.twice", twice));
            Optional<GaugeAbility> ability = name.flatMap(GaugeKind::ofKey).isPresent()
                    ? finer(keys, name.orElseThrow(), unit)
                    : own(keys, name, unit);
            ability.ifPresent(known -> put(known, all));
        }
        return List.copyOf(all);
    }

    /** In the place of the one it refines, or behind all. */
    private static void put(GaugeAbility ability, List<GaugeAbility> all) {
        List<GaugeKind> kinds = all.stream().map(GaugeAbility::kind).toList();
        if (kinds.contains(ability.kind())) {
            all.set(kinds.indexOf(ability.kind()), ability);
        } else {
            all.add(ability);
        }
    }

    /** What a kind can make that is known everywhere nobody changes. */
    private static Optional<GaugeAbility> finer(TableKeys keys, String name, Unit unit) {
        for (String known : List.of(MAKES, ON_MASTER, TOUCHES)) {
            keys.ifAny(known, key -> {
                keys.problem(key, "plan.gauge-kind.known", name, key);
                return Optional.empty();
            });
        }
        Optional<Written> resolution = keys.size(RESOLUTION, unit);
        keys.finish();
        GaugeAbility known = GaugeAbility.KNOWN.stream()
                .filter(ability -> ability.kind().key().equals(name))
                .findFirst()
                .orElseThrow();
        return keys.built(() -> new GaugeAbility(known.kind(), known.makes(), known.touchesAtTwo(), resolution));
    }

    private static Optional<GaugeAbility> own(TableKeys keys, Optional<String> name, Unit unit) {
        List<String> makes = makes(keys);
        boolean onMaster = keys.ifAny(ON_MASTER, keys::truth).orElse(false);
        Optional<Integer> touches = keys.ifAny(TOUCHES, keys::whole);
        touches.filter(places -> places < TWO)
                .ifPresent(places -> keys.problem(TOUCHES, "plan.gauge-kind.touches", places));
        Optional<Written> resolution = keys.ifAny(RESOLUTION, key -> keys.size(key, unit));
        keys.finish();
        return keys.built(() -> new GaugeAbility(
                new GaugeKind(name.orElseThrow(), onMaster ? GaugeKind.Reference.MASTER : GaugeKind.Reference.NONE),
                makes,
                touches.filter(places -> places == TWO).isPresent(),
                resolution));
    }

    private static List<String> makes(TableKeys keys) {
        List<String> makes = new ArrayList<>();
        keys.list(MAKES).ifPresent(list -> list.items().forEach(item -> {
            if (item instanceof RawValue.Text text && !text.text().isBlank()) {
                makes.add(text.text().strip());
            } else {
                keys.problem(item.spot(), "plan.gauge-kind.makes", item.what());
            }
        }));
        return makes;
    }
}
