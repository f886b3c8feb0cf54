package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.checklists.materials.Material;
import org.tenthwise.checklists.materials.Materials;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.plan.ThermalData.Growth;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.TemperatureRange;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/** {@code [temperature]}: how part and gauges grow with heat, and how cold and how warm the shop gets. */
final class ClimateRules {

    static final String KEY = "temperature";
    private static final String DEGREES = "degrees";
    private static final String PART_EXPANSION = "part_expansion";
    private static final String PART_MATERIAL = "part_material";
    private static final String GAUGE_EXPANSION = "gauge_expansion";
    private static final String SHOP_LEAST = "shop_least";
    private static final String SHOP_GREATEST = "shop_greatest";

    private static final Message THE_PLAN = Message.of("plan.grows.said");
    private static final Growth STEEL = new Growth(Expansion.of("11.5"), Message.of("plan.grows.unsaid"));
    /** Colder or warmer is no shop to measure in; 68 in °C is one in °F, and 20 in °F one in °C. */
    private static final Celsius COLDEST = Celsius.of("0");

    private static final Celsius WARMEST = Celsius.of("60");

    private final TableKeys keys;
    private final TemperatureScale scale;

    private ClimateRules(TableKeys keys, Unit unit) {
        this.keys = keys;
        this.scale = scale(keys, unit);
    }

    /** Absent where the plan has no such table, or one with problems. */
    static Optional<ThermalData> read(TableKeys plan, Unit unit) {
        return plan.ifAny(KEY, plan::table).flatMap(table -> new ClimateRules(plan.inside(KEY, table), unit).read());
    }

    /** A plan in inches says which, as its shop may have either; °C where nothing is said. */
    private static TemperatureScale scale(TableKeys keys, Unit unit) {
        Optional<TemperatureScale> written =
                keys.ifAny(DEGREES, key -> keys.word(key, List.of(TemperatureScale.values()), TemperatureScale::key));
        if (unit == Unit.INCH && !keys.has(DEGREES)) {
            keys.problemUnlessKept(keys.spot(), "plan.climate.degrees-missing");
        }
        if (unit == Unit.MILLIMETRE
                && written.filter(TemperatureScale.FAHRENHEIT::equals).isPresent()) {
            keys.problem(DEGREES, "plan.climate.mm-celsius");
        }
        return written.orElse(TemperatureScale.CELSIUS);
    }

    private Optional<ThermalData> read() {
        Optional<Growth> part = part();
        Optional<Growth> gauge =
                keys.ifAny(GAUGE_EXPANSION, this::expansion).map(written -> new Growth(written, THE_PLAN));
        Optional<Degrees> least = degrees(SHOP_LEAST);
        Optional<Degrees> greatest = degrees(SHOP_GREATEST);
        if (least.isPresent()
                && greatest.isPresent()
                && least.get().celsius().isAbove(greatest.get().celsius())) {
            keys.problem(SHOP_GREATEST, "plan.climate.shop-range", greatest.get(), least.get());
        }
        keys.finish();
        return keys.built(() -> new ThermalData(
                part.orElseThrow(),
                gauge.orElse(STEEL),
                new TemperatureRange(
                        least.orElseThrow().celsius(), greatest.orElseThrow().celsius()),
                scale));
    }

    private Optional<Growth> part() {
        Optional<Growth> written =
                keys.ifAny(PART_EXPANSION, this::expansion).map(expansion -> new Growth(expansion, THE_PLAN));
        Optional<Growth> named = keys.ifAny(PART_MATERIAL, keys::text).flatMap(this::material);
        if (keys.has(PART_EXPANSION) == keys.has(PART_MATERIAL)) {
            keys.problem(
                    PART_MATERIAL, keys.has(PART_MATERIAL) ? "plan.climate.part-twice" : "plan.climate.part-missing");
        }
        return written.or(() -> named);
    }

    private Optional<Growth> material(String name) {
        Materials materials = Materials.known();
        Optional<Material> material = materials.named(name);
        if (material.isEmpty()) {
            List<String> conditions =
                    materials.ofDesignation(name).stream().map(Material::name).toList();
            if (conditions.isEmpty()) {
                keys.unknown(
                        PART_MATERIAL,
                        "plan.climate.material",
                        name,
                        materials.all().stream()
                                .map(Material::designation)
                                .distinct()
                                .toList());
            } else {
                keys.problem(PART_MATERIAL, "plan.climate.condition", name, TableKeys.quoted(conditions));
            }
        }
        return material.map(found ->
                new Growth(found.expansion(), Message.of("plan.grows.material", found.name(), found.source())));
    }

    private Optional<Expansion> expansion(String key) {
        return keys.number(key).flatMap(figure -> made(key, figure, scale::expansion));
    }

    private Optional<Degrees> degrees(String key) {
        return keys.number(key).flatMap(figure -> {
            Optional<Degrees> read = made(key, figure, degrees -> new Degrees(degrees, scale));
            boolean noShop = read.map(Degrees::celsius)
                    .filter(at -> COLDEST.isAbove(at) || at.isAbove(WARMEST))
                    .isPresent();
            if (noShop) {
                keys.problem(key, "plan.climate.no-shop", key, scale.of(COLDEST).text(), scale.of(WARMEST), figure);
            }
            return noShop ? Optional.empty() : read;
        });
    }

    private <T> Optional<T> made(String key, BigDecimal figure, Function<BigDecimal, T> make) {
        try {
            return Optional.of(make.apply(figure));
        } catch (IllegalArgumentException e) {
            keys.problem(key, "plan.refused", key, Explained.why(e));
            return Optional.empty();
        }
    }
}
