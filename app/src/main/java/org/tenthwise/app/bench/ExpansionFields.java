package org.tenthwise.app.bench;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.checklists.materials.Material;
import org.tenthwise.checklists.materials.Materials;

/** How much something expands: chosen by its material, whose figure is then filled in, or typed. */
final class ExpansionFields {

    static final String TYPED = "typed";
    private static final String MATERIAL = "_material";
    private static final String ALPHA = "_alpha";
    private static final Materials TABLE = Materials.known();
    private static final List<String> CHOICES = Stream.concat(
                    Stream.of(TYPED), TABLE.all().stream().map(ExpansionFields::name))
            .toList();

    private ExpansionFields() {}

    /** The material, and the expansion itself. */
    static List<FormField> of(Input<?> alpha) {
        return List.of(
                FormField.ofTheForm(alpha.key().replace(ALPHA, MATERIAL), Quantity.WORD)
                        .choosing(CHOICES),
                FormField.of(alpha).must());
    }

    static boolean isMaterial(String id) {
        return id.endsWith(MATERIAL);
    }

    /** Fills in the figure of a material chosen; a figure typed is of no material in particular. */
    static FormValues follow(FormValues filled, String id) {
        if (isMaterial(id)) {
            return material(filled.text(id))
                    .map(chosen -> filled.with(
                            id.replace(MATERIAL, ALPHA),
                            chosen.expansion().millionths().toPlainString()))
                    .orElse(filled);
        }
        return id.endsWith(ALPHA) && filled.texts().containsKey(id.replace(ALPHA, MATERIAL))
                ? filled.with(id.replace(ALPHA, MATERIAL), TYPED)
                : filled;
    }

    private static Optional<Material> material(String name) {
        return TABLE.all().stream()
                .filter(material -> name(material).equals(name))
                .findFirst();
    }

    /** The designation alone where the table has it in one condition only. */
    private static String name(Material material) {
        return TABLE.ofDesignation(material.designation()).size() == 1 ? material.designation() : material.name();
    }
}
