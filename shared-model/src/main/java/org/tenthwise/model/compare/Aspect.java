package org.tenthwise.model.compare;

import java.util.Arrays;
import java.util.List;

/**
 * What of a plan or a step can change, each with the components of the model that say it, and what sort of change that
 * is. A component that none of them names is a requirement, so that nothing new changes unseen.
 */
public enum Aspect {
    PART(ChangeKind.REQUIREMENT, "part.number"),
    UNIT(ChangeKind.REQUIREMENT, "unit"),
    MATERIAL(ChangeKind.REQUIREMENT, "material"),
    STEP_CLASS(ChangeKind.REQUIREMENT, "stepClass"),
    REQUIREMENT(ChangeKind.REQUIREMENT, "drawing.requirement"),
    QUESTION(ChangeKind.REQUIREMENT, "check.what", "check.of", "check.by", "check.go", "check.notGo", "check.feel"),
    SPECIFICATION(ChangeKind.REQUIREMENT, "check.specified", "check.proof"),
    COUNT(ChangeKind.REQUIREMENT, "drawing.instances.count", "drawing.instances.one"),
    FEATURE(ChangeKind.REQUIREMENT, "check.feature", "check.holes"),
    LOWER_LIMIT(ChangeKind.REQUIREMENT, "*.lower"),
    UPPER_LIMIT(ChangeKind.REQUIREMENT, "*.upper", "check.limit", "check.zone"),
    TOLERANCE_CLASS(ChangeKind.REQUIREMENT, "*.origin"),
    THREAD(ChangeKind.REQUIREMENT, "check.thread", "check.minorDiameter"),
    GUARD_BAND(ChangeKind.REQUIREMENT, "check.guardBand"),
    MODIFIER(ChangeKind.REQUIREMENT, "check.drawingSays", "check.modifier", "check.rule"),

    KIND(ChangeKind.METHOD, "kind"),
    PLACES(ChangeKind.METHOD, "check.places", "check.ends", "check.angles", "check.sections"),
    READINGS(ChangeKind.METHOD, "check.readingsEach"),
    COMBINE(ChangeKind.METHOD, "check.combine"),
    GAUGE(ChangeKind.METHOD, "check.with.kind"),
    GAUGE_ID(ChangeKind.METHOD, "check.with.gauge", "check.gauge"),
    MASTER(ChangeKind.METHOD, "check.with.reference"),
    UNCERTAINTY(ChangeKind.METHOD, "check.with.uncertainty", "check.ofAReading"),
    CONTACT(ChangeKind.METHOD, "check.contact"),
    HOLDING(ChangeKind.METHOD, "check.holding", "check.firstJaw"),
    RESTS_ON(ChangeKind.METHOD, "check.boreStep", "check.minorStep", "check.sizeStep", "check.uses", "check.restsOn"),
    WHERE(ChangeKind.METHOD, "check.where"),
    TEMPERATURE(ChangeKind.METHOD, "temperatureAsked", "climate"),
    CLAMPING(ChangeKind.METHOD, "clamping"),
    WHEN(ChangeKind.METHOD, "when"),
    REPORT(ChangeKind.METHOD, "drawing.instances.report"),

    OPERATION(ChangeKind.PROCESS, "operation"),
    ROUTE(ChangeKind.PROCESS, "route"),
    CUTTING(ChangeKind.PROCESS, "check.cutAgain", "check.cutting", "check.cutWith"),
    HOLD(ChangeKind.PROCESS, "hold"),

    REVISION(ChangeKind.DRAWING, "part.revision"),
    DRAWING(ChangeKind.DRAWING, "drawing.number", "drawing.sheets"),
    DRAWING_REVISION(ChangeKind.DRAWING, "drawing.revision"),
    CHANGES(ChangeKind.DRAWING, "drawing.changes"),

    BALLOON(ChangeKind.PLACE, "drawing.balloon"),
    SHEET(ChangeKind.PLACE, "drawing.sheet"),
    ZONE(ChangeKind.PLACE, "drawing.zone"),
    DESIGNATOR(ChangeKind.DESIGNATOR, "drawing.designator"),

    NAME(ChangeKind.WORDS, "name", "drawing.title", "remark"),
    METHOD(ChangeKind.WORDS, "method"),
    CAUTION(ChangeKind.WORDS, "caution"),
    LOT(ChangeKind.WORDS, "lotAsked"),
    OUTLINE(ChangeKind.WORDS, "mark", "outline"),
    PAGE(ChangeKind.WORDS, "drawing.file", "drawing.onPage"),

    OTHER(ChangeKind.REQUIREMENT);

    private final ChangeKind kind;
    private final List<String> paths;

    Aspect(ChangeKind kind, String... paths) {
        this.kind = kind;
        this.paths = List.of(paths);
    }

    public ChangeKind kind() {
        return kind;
    }

    /** The one that a component belongs to, by its way from the plan or the step: {@code check.limits.lower}. */
    static Aspect of(String path) {
        return Arrays.stream(values())
                .filter(aspect -> aspect.paths.stream().anyMatch(named -> isIn(path, named)))
                .findFirst()
                .orElse(OTHER);
    }

    /** The component itself or one inside it; with a star, one so called anywhere in the check. */
    private static boolean isIn(String path, String named) {
        if (named.startsWith("*")) {
            return path.startsWith("check.") && (path + ".").contains(named.substring(1) + ".");
        }
        return (path + ".").startsWith(named + ".");
    }
}
