package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.checklists.materials.Material;
import org.tenthwise.checklists.materials.Materials;
import org.tenthwise.model.plan.Climate;
import org.tenthwise.model.plan.Climate.Growth;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.TemperatureRange;

/** {@code [temperature]}: how part and gauges grow with heat, and how cold and how warm the shop gets. */
final class ClimateRules {

    static final String KEY = "temperature";
    private static final String PART_EXPANSION = "part_expansion";
    private static final String PART_MATERIAL = "part_material";
    private static final String GAUGE_EXPANSION = "gauge_expansion";
    private static final String SHOP_LEAST = "shop_least";
    private static final String SHOP_GREATEST = "shop_greatest";

    private static final Growth STEEL = new Growth(Expansion.of("11.5"), "steel, as the plan says nothing else");
    /** Colder or warmer is no shop to measure in; 68 is one in degrees Fahrenheit. */
    private static final BigDecimal COLDEST = BigDecimal.ZERO;
    private static final BigDecimal WARMEST = new BigDecimal("60");

    private final Keys keys;

    private ClimateRules(Keys keys) {
        this.keys = keys;
    }

    /** Absent where the plan has no such table, or one with problems. */
    static Optional<Climate> read(Keys plan) {
        return plan.ifAny(KEY, plan::table).flatMap(table -> new ClimateRules(plan.inside(KEY, table)).read());
    }

    private Optional<Climate> read() {
        Optional<Growth> part = part();
        Optional<Growth> gauge = keys.ifAny(GAUGE_EXPANSION, this::expansion).map(written -> new Growth(written, "the plan"));
        Optional<Celsius> least = degrees(SHOP_LEAST);
        Optional<Celsius> greatest = degrees(SHOP_GREATEST);
        if (least.isPresent() && greatest.isPresent() && least.get().isAbove(greatest.get())) {
            keys.problem(SHOP_GREATEST, "the shop is at most %s here, which is below its least, %s".formatted(greatest.get(), least.get()));
        }
        keys.finish();
        return keys.built(() -> new Climate(part.orElseThrow(), gauge.orElse(STEEL),
                new TemperatureRange(least.orElseThrow(), greatest.orElseThrow())));
    }

    private Optional<Growth> part() {
        Optional<Growth> written = keys.ifAny(PART_EXPANSION, this::expansion).map(expansion -> new Growth(expansion, "the plan"));
        Optional<Growth> named = keys.ifAny(PART_MATERIAL, keys::text).flatMap(this::material);
        if (keys.has(PART_EXPANSION) == keys.has(PART_MATERIAL)) {
            keys.problem(PART_MATERIAL, keys.has(PART_MATERIAL)
                    ? "\"part_expansion\" and \"part_material\" are both given; give one of them"
                    : "\"part_expansion\" is missing; give it, or \"part_material\" by its name in the table of materials");
        }
        return written.or(() -> named);
    }

    private Optional<Growth> material(String name) {
        Materials materials = Materials.known();
        Optional<Material> material = materials.named(name);
        if (material.isEmpty()) {
            List<String> conditions = materials.ofDesignation(name).stream().map(Material::name).toList();
            List<String> names = materials.all().stream().map(Material::designation).distinct().toList();
            keys.problem(PART_MATERIAL, conditions.isEmpty()
                    ? "no material in the table is called \"%s\"%s; give its \"part_expansion\" instead".formatted(name,
                            NearestWord.to(name, names).map(", perhaps \"%s\""::formatted).orElse(""))
                    : "\"%s\" expands according to its condition; name it as %s".formatted(name, Keys.listed(conditions)));
        }
        return material.map(found -> new Growth(found.expansion(), found.name() + ": " + found.source()));
    }

    private Optional<Expansion> expansion(String key) {
        return keys.number(key).flatMap(figure -> made(key, figure, Expansion::new));
    }

    private Optional<Celsius> degrees(String key) {
        return keys.number(key).flatMap(figure -> {
            if (figure.compareTo(COLDEST) < 0 || figure.compareTo(WARMEST) > 0) {
                keys.problem(key, "\"%s\" must be from %s to %s °C, not %s".formatted(key, COLDEST.toPlainString(),
                        WARMEST.toPlainString(), figure.toPlainString()));
                return Optional.empty();
            }
            return made(key, figure, Celsius::new);
        });
    }

    private <T> Optional<T> made(String key, BigDecimal figure, Function<BigDecimal, T> make) {
        try {
            return Optional.of(make.apply(figure));
        } catch (IllegalArgumentException e) {
            keys.problem(key, "\"%s\": %s".formatted(key, e.getMessage()));
            return Optional.empty();
        }
    }
}
