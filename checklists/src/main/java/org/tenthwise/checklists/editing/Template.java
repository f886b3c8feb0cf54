package org.tenthwise.checklists.editing;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Checks that are put into a plan together. What only a drawing can say is left out of them, so that it is open in the
 * plan and asked for there. Steps that name each other do so by their numbers in the template.
 *
 * @param name what it is offered as
 * @param steps at least one
 */
public record Template(String name, List<TableText> steps) {

    private static final String STEP = "step";
    private static final String NAME = "name";
    private static final String PLACES = "places";
    /** What another part has otherwise: its numbers on the drawing, its sizes, its places on the outline. */
    private static final Set<String> OF_ONE_DRAWING = Set.of(
            "operation",
            "balloon",
            "instance",
            "count",
            "sheet",
            "drawing_zone",
            "designator",
            "requirement",
            "drawing",
            "drawing_says",
            "at",
            "lower",
            "upper",
            "nominal",
            "plus_minus",
            "zone",
            "limit",
            "aim",
            "guard_band",
            "least_cut",
            "offset_step",
            "designation",
            "form",
            "diameter",
            "pitch",
            "threads_per_inch",
            "starts",
            "wire",
            "minor_diameter",
            "grooves",
            "drill",
            "read_to",
            "sections",
            "clearance_least",
            "clearance_greatest",
            "go",
            "not_go",
            "go_size",
            "not_go_size",
            "x",
            "y",
            "radius",
            "angle",
            "holes",
            "bolt_circle",
            "ends",
            "datum",
            "of",
            "master",
            "gauge");
    /** Figures that are no other part's: of steps of the template itself, and how often is read. */
    private static final Set<String> FIGURES_KEPT = Set.of("number", "hold", "readings_each");
    /** Without its helix a tooth would be judged as a straight one, so what it is worked out by is asked anew. */
    private static final String HELIX = "helix";

    private static final String BY = "by";
    /** Keys that end so name a step of the template. */
    private static final String OF_A_STEP = "_step";
    /** Words that are kept unless there is a figure in them, which would be that of another part. */
    private static final Set<String> WORDS = Set.of(NAME, "method", "what");

    public Template {
        steps = List.copyOf(steps);
    }

    /** Absent where the text is no TOML or has no step; one without a name goes by that of its file. */
    public static Optional<Template> of(String text, String fileName) {
        return PlanText.of(text)
                .map(plan -> new Template(plan.head().says(NAME).orElse(fileName), plan.list(STEP)))
                .filter(template -> !template.steps().isEmpty());
    }

    /** Makes one of steps of a plan: without what is true of its drawing alone, nor the comments about it. */
    public static Template kept(String name, List<TableText> steps) {
        return new Template(name, steps.stream().map(Template::withoutDrawing).toList());
    }

    private static TableText withoutDrawing(TableText step) {
        TableText kept = step.bare();
        for (String key : step.keys()) {
            String first = key.split("\\.", 2)[0];
            if (OF_ONE_DRAWING.contains(first) || isOfOnePart(step, first)) {
                kept = kept.without(key);
            }
        }
        return kept;
    }

    private static boolean isOfOnePart(TableText step, String key) {
        String says = step.value(key).orElse("");
        boolean isFigure = says.matches("[+-]?\\d.*") && !FIGURES_KEPT.contains(key) && !key.endsWith(OF_A_STEP);
        return isFigure
                || WORDS.contains(key) && says.chars().anyMatch(Character::isDigit)
                || key.equals(PLACES) && says.contains("depth")
                || key.equals(BY) && step.value(HELIX).isPresent();
    }

    /** As a file that {@link #of} reads; steps are numbered from 1, and name each other so. */
    public String text() {
        PlanText head = PlanText.of("").orElseThrow().withHead(top -> top.with(NAME, TomlValue.text(name)));
        return new WorkOrder(head).inserted(0, steps).text();
    }
}
