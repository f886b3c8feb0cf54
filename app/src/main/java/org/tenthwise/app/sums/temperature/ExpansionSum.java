package org.tenthwise.app.sums.temperature;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.checklists.materials.Material;
import org.tenthwise.checklists.materials.Materials;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

/** <em>expansion</em>: how much a material grows, from the table of materials. */
public final class ExpansionSum implements Sum {

    public static final Input<String> MATERIAL = Input.name("material");
    public static final Input<String> CONDITION = Input.name("condition").optional();
    public static final Output<BigDecimal> ALPHA = Output.exact("alpha").in(Quantity.EXPANSION);
    public static final Output<String> CONDITION_FOUND = Output.word("condition");
    public static final Output<BigDecimal> LEAST = Output.exact("least").in(Quantity.EXPANSION);
    public static final Output<BigDecimal> GREATEST = Output.exact("greatest").in(Quantity.EXPANSION);
    public static final Output<String> BETWEEN = Output.word("between");
    private static final SumDescription DESCRIPTION = SumDescription.named("expansion")
            .takes(MATERIAL, CONDITION)
            .gives(ALPHA, CONDITION_FOUND, LEAST, GREATEST, BETWEEN);

    private final Materials materials = Materials.known();

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Material material = material(given);
        return DESCRIPTION
                .in(Unit.MILLIMETRE)
                .put(ALPHA, material.expansion().millionths())
                .put(CONDITION_FOUND, material.condition())
                .put(LEAST, material.least().millionths())
                .put(GREATEST, material.greatest().millionths())
                .put(BETWEEN, material.between())
                .note("melts")
                .on(Message.of("as-said", material.source()));
    }

    private Material material(SumInput given) {
        String designation = given.get(MATERIAL);
        List<Material> alike = materials.ofDesignation(designation);
        if (alike.isEmpty()) {
            throw new CannotAnswer(
                    MATERIAL,
                    "unknown",
                    designation,
                    listed(materials.all().stream()
                            .map(Material::designation)
                            .collect(Collectors.toCollection(LinkedHashSet::new))));
        }
        if (!given.has(CONDITION)) {
            if (alike.size() > 1) {
                throw new CannotAnswer(CONDITION, "missing", designation, conditions(alike));
            }
            return alike.get(0);
        }
        String condition = given.get(CONDITION);
        return alike.stream()
                .filter(material -> material.condition().equals(condition))
                .findFirst()
                .orElseThrow(() -> new CannotAnswer(CONDITION, "unknown", condition, designation, conditions(alike)));
    }

    private static List<String> conditions(List<Material> alike) {
        return listed(alike.stream().map(Material::condition).collect(Collectors.toCollection(LinkedHashSet::new)));
    }

    private static List<String> listed(Set<String> words) {
        return words.stream().map(word -> '"' + word + '"').toList();
    }
}
