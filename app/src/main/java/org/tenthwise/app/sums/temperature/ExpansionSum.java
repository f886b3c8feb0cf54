package org.tenthwise.app.sums.temperature;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.checklists.materials.Material;
import org.tenthwise.checklists.materials.Materials;
import org.tenthwise.model.quantity.Unit;

/** <em>expansion</em>: how much a material grows, from the table of materials. */
final class ExpansionSum implements Sum {

    private static final String MATERIAL = "material";
    private static final String CONDITION = "condition";

    private final Materials materials;

    ExpansionSum(Materials materials) {
        this.materials = materials;
    }

    @Override
    public String name() {
        return "expansion";
    }

    @Override
    public Set<String> keys() {
        return Set.of(MATERIAL, CONDITION);
    }

    @Override
    public SumResult of(SumInput given) {
        Material material = material(given);
        return SumResult.in(Unit.MILLIMETRE)
                .exact("alpha", material.expansion().millionths())
                .word(CONDITION, material.condition())
                .exact("least", material.least().millionths())
                .exact("greatest", material.greatest().millionths())
                .word("between", material.between())
                .note("In 1e-6 per °C. Melts of one designation differ by about a tenth: least and greatest say so.")
                .on(material.source());
    }

    private Material material(SumInput given) {
        String designation = given.text(MATERIAL);
        List<Material> alike = materials.ofDesignation(designation);
        if (alike.isEmpty()) {
            throw new CannotAnswer(
                    MATERIAL,
                    "material is \"%s\": the table has %s"
                            .formatted(
                                    designation,
                                    listed(materials.all().stream()
                                            .map(Material::designation)
                                            .collect(Collectors.toCollection(LinkedHashSet::new)))));
        }
        if (!given.has(CONDITION)) {
            if (alike.size() > 1) {
                throw new CannotAnswer(
                        CONDITION,
                        "condition is missing: the table has \"%s\" in more than one, as %s"
                                .formatted(designation, conditions(alike)));
            }
            return alike.get(0);
        }
        String condition = given.text(CONDITION);
        return alike.stream()
                .filter(material -> material.condition().equals(condition))
                .findFirst()
                .orElseThrow(() -> new CannotAnswer(
                        CONDITION,
                        "condition is \"%s\": the table has \"%s\" as %s"
                                .formatted(condition, designation, conditions(alike))));
    }

    private static String conditions(List<Material> alike) {
        return listed(alike.stream().map(Material::condition).collect(Collectors.toCollection(LinkedHashSet::new)));
    }

    private static String listed(Set<String> words) {
        return words.stream().map(word -> '"' + word + '"').collect(Collectors.joining(", "));
    }
}
