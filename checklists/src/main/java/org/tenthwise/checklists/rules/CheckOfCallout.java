package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.checklists.format.Spot;
import org.tenthwise.model.callout.CalloutKind;
import org.tenthwise.model.callout.CalloutPart;
import org.tenthwise.model.callout.ToleranceFrame;
import org.tenthwise.model.compute.zone.ToleranceZone;
import org.tenthwise.model.plan.IndicatedCheck;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.ScaleCheck;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadSide;
import org.tenthwise.model.tolerance.MaterialModifier;
import org.tenthwise.model.words.Word;

/**
 * The check that follows from a part of a callout: its kind, limits and count, and the gauge that is usual. Whether a
 * diameter is a bore or a shaft only its tolerance class can say.
 *
 * @param text the whole callout
 * @param said the kind of the step, where it says one: then only what goes with that follows
 */
record CheckOfCallout(CalloutPart part, String text, Optional<String> said) {

    private static final Set<CalloutKind> ANGLES =
            EnumSet.of(CalloutKind.ANGLE, CalloutKind.CHAMFER_ANGLE, CalloutKind.COUNTERSINK_ANGLE);
    private static final Set<CalloutKind> BORES =
            EnumSet.of(CalloutKind.DIAMETER, CalloutKind.COUNTERBORE, CalloutKind.SPOTFACE, CalloutKind.LINEAR);
    private static final Set<CalloutKind> OF_A_RADIUS =
            EnumSet.of(CalloutKind.RADIUS, CalloutKind.EDGE, CalloutKind.LINEAR);
    private static final Set<CalloutKind> OF_A_CHAMFER =
            EnumSet.of(CalloutKind.CHAMFER, CalloutKind.EDGE, CalloutKind.LINEAR);
    private static final Set<CalloutKind> ACROSS_OR_ALONG = EnumSet.of(
            CalloutKind.LINEAR,
            CalloutKind.DIAMETER,
            CalloutKind.SQUARE,
            CalloutKind.ARC,
            CalloutKind.COUNTERBORE,
            CalloutKind.COUNTERSINK,
            CalloutKind.SPOTFACE,
            CalloutKind.DEPTH);
    private static final Set<CalloutKind> OF_WORDS = EnumSet.of(CalloutKind.NOTE, CalloutKind.PROCESS);
    private static final Set<CalloutKind> NOT_INSPECTED =
            EnumSet.of(CalloutKind.REFERENCE, CalloutKind.BASIC, CalloutKind.BASIC_ANGLE);
    private static final Set<CalloutKind> ON_A_SCALE = EnumSet.of(
            CalloutKind.ROUGHNESS_RA,
            CalloutKind.ROUGHNESS_RZ,
            CalloutKind.ROUGHNESS_RQ,
            CalloutKind.ROUGHNESS_RT,
            CalloutKind.HARDNESS,
            CalloutKind.SCALE);
    /** What an indicator shows over a sweep, of the kinds it can. */
    private static final Map<CalloutKind, IndicatedCheck.Of> MOVEMENTS = new EnumMap<>(Map.of(
            CalloutKind.CIRCULAR_RUNOUT, IndicatedCheck.Of.CIRCULAR_RUN_OUT,
            CalloutKind.TOTAL_RUNOUT, IndicatedCheck.Of.TOTAL_RUN_OUT,
            CalloutKind.PERPENDICULARITY, IndicatedCheck.Of.SQUARENESS,
            CalloutKind.PARALLELISM, IndicatedCheck.Of.PARALLELISM,
            CalloutKind.FLATNESS, IndicatedCheck.Of.FLATNESS,
            CalloutKind.SYMMETRY, IndicatedCheck.Of.SYMMETRY));
    /** What a figure in that unit is usually read with, where only one instrument shows it; common practice. */
    private static final Map<String, String> GAUGES_OF_UNITS = Map.of(
            "N·m", "torque-wrench",
            "N·cm", "torque-wrench",
            "lbf·ft", "torque-wrench",
            "lbf·in", "torque-wrench",
            "kg", "weighing-scale",
            "g", "weighing-scale",
            "lb", "weighing-scale",
            "oz", "weighing-scale",
            "ml/min", "leak-tester",
            "cm³/min", "leak-tester");

    private static final Map<String, String> GAUGES = Map.of(
            "bore", "bore-gauge",
            "diameter", "micrometer",
            "width", "inside-micrometer",
            "depth", "depth-micrometer",
            "angle", "bevel-protractor");
    private static final int LONGEST_NAME = 60;

    /** What a kind of check is called, of what feature it is, and what it is usually read with. */
    private record Usual(String kind, Optional<String> feature, Optional<String> gauge) {

        static Usual of(String kind) {
            return new Usual(kind, Optional.empty(), Optional.ofNullable(GAUGES.get(kind)));
        }

        static Usual size(String feature, String gauge) {
            return new Usual("size", Optional.of(feature), Optional.of(gauge));
        }
    }

    /** The kind of check, where one follows. */
    static Optional<String> kind(CalloutPart part) {
        return usual(part).map(Usual::kind);
    }

    /** The gauge that is usual for it, where one is. */
    static Optional<String> gauge(CalloutPart part) {
        return usual(part).flatMap(Usual::gauge);
    }

    /** The key of what is said where none does. */
    static String whyNoKind(CalloutPart part) {
        if (part.kind() == CalloutKind.DIAMETER) {
            return "plan.requirement.inside-or-outside";
        }
        return NOT_INSPECTED.contains(part.kind()) ? "plan.requirement.not-inspected" : "plan.requirement.no-kind";
    }

    /**
     * Whether a check of {@code kind} can be of the part: the limits of a radius are none of a diameter, those of a
     * zone none of a size. A figure without a sign is what the step says it is.
     *
     * @param feature of a size, where the step says one
     */
    static boolean canBe(String kind, Optional<String> feature, CalloutPart part) {
        return switch (kind) {
            case "bore" -> BORES.contains(part.kind());
            case "diameter" -> part.kind() == CalloutKind.DIAMETER || part.kind() == CalloutKind.LINEAR;
            case "width" -> part.kind() == CalloutKind.SQUARE || part.kind() == CalloutKind.LINEAR;
            case "depth" -> part.kind() == CalloutKind.DEPTH || part.kind() == CalloutKind.LINEAR;
            case "angle" -> ANGLES.contains(part.kind());
            case "thread-over-wires" -> part.kind() == CalloutKind.THREAD;
            case ScaleCheck.KEY -> ON_A_SCALE.contains(part.kind());
            case IndicatedCheck.KEY ->
                part.frame().filter(frame -> isIndicated(part, frame)).isPresent();
            case PositionCheck.KEY ->
                part.frame().filter(frame -> isPosition(part, frame)).isPresent();
            default ->
                switch (feature.orElse("")) {
                    case "radius" -> OF_A_RADIUS.contains(part.kind());
                    case "chamfer" -> OF_A_CHAMFER.contains(part.kind());
                    case "edge" -> part.kind() == CalloutKind.EDGE;
                    default -> ACROSS_OR_ALONG.contains(part.kind());
                };
        };
    }

    static boolean needsLimits(CalloutPart part) {
        return !OF_WORDS.contains(part.kind()) && !NOT_INSPECTED.contains(part.kind());
    }

    private static Optional<Usual> usual(CalloutPart part) {
        Optional<Boolean> hole = part.zone().map(ToleranceZone::isHole);
        return switch (part.kind()) {
            case DIAMETER -> hole.map(is -> Usual.of(is ? "bore" : "diameter"));
            case LINEAR ->
                Optional.of(hole.map(is -> is ? Usual.of("width") : Usual.size("thickness", "micrometer"))
                        .orElse(Usual.size("length", "caliper")));
            case SQUARE -> Optional.of(Usual.size("flats", "micrometer"));
            case RADIUS -> Optional.of(Usual.size("radius", "radius-gauge"));
            case CHAMFER -> Optional.of(Usual.size("chamfer", "caliper"));
            case COUNTERBORE, SPOTFACE -> Optional.of(Usual.size("counterbore", "caliper"));
            case DEPTH -> Optional.of(Usual.of("depth"));
            case ANGLE, CHAMFER_ANGLE, COUNTERSINK_ANGLE -> Optional.of(Usual.of("angle"));
            case THREAD ->
                side(part).map(side -> Usual.of(side == ThreadSide.EXTERNAL ? "thread-over-wires" : "go-not-go"));
            case EDGE, COUNTERSINK, ARC ->
                Optional.of(new Usual("size", Optional.of(part.kind().key()), Optional.empty()));
            case ROUGHNESS_RA, ROUGHNESS_RZ, ROUGHNESS_RQ, ROUGHNESS_RT -> scale(Optional.of("roughness-tester"));
            case HARDNESS -> scale(Optional.of("hardness-tester"));
            case SCALE ->
                scale(part.unit().map(Unit::symbol).flatMap(unit -> Optional.ofNullable(GAUGES_OF_UNITS.get(unit))));
            case NOTE -> Optional.of(Usual.of("look"));
            case PROCESS -> Optional.of(Usual.of("document"));
            default -> part.frame().map(frame -> Usual.of(ofFrame(part, frame)));
        };
    }

    private static Optional<Usual> scale(Optional<String> gauge) {
        return Optional.of(new Usual(ScaleCheck.KEY, Optional.empty(), gauge));
    }

    /** What neither an indicator nor a sum of two coordinates proves is proven elsewhere. */
    private static String ofFrame(CalloutPart part, ToleranceFrame frame) {
        if (isIndicated(part, frame)) {
            return IndicatedCheck.KEY;
        }
        return isPosition(part, frame) ? PositionCheck.KEY : "document";
    }

    /** A zone with a bonus, or round about an axis, is not what an indicator shows over a face. */
    private static boolean isIndicated(CalloutPart part, ToleranceFrame frame) {
        return MOVEMENTS.containsKey(part.kind())
                && frame.isPlain()
                && !frame.isRound()
                && frame.modifier() == MaterialModifier.NONE;
    }

    private static boolean isPosition(CalloutPart part, ToleranceFrame frame) {
        return part.kind() == CalloutKind.POSITION && frame.isPlain() && frame.isRound();
    }

    /** The word for the feature of a size, where one follows. */
    static Optional<String> feature(CalloutPart part) {
        return usual(part).flatMap(Usual::feature);
    }

    /** What is usual of a part whose kind the step says. */
    private Optional<Usual> usual() {
        Optional<Usual> follows = usual(part);
        return said.map(kind ->
                        follows.filter(usual -> usual.kind().equals(kind)).or(() -> Optional.of(Usual.of(kind))))
                .orElse(follows);
    }

    private static Optional<ThreadSide> side(CalloutPart part) {
        return part.origin()
                .flatMap(from -> ThreadDesignation.read(from.designation()).side());
    }

    /**
     * {@code table} with what it leaves out, all of it where the requirement stands.
     *
     * @param withLimits whether the limits are left out as well
     */
    RawTable completed(RawTable table, String key, boolean withLimits) {
        Spot spot = table.values().get(key).spot();
        Map<String, RawValue> values = new LinkedHashMap<>(table.values());
        usual().ifPresent(usual -> {
            put(values, "kind", new RawValue.Text(spot, usual.kind()));
            usual.feature().ifPresent(feature -> put(values, "feature", new RawValue.Text(spot, feature)));
            usual.gauge().ifPresent(gauge -> put(values, "gauge_kind", new RawValue.Text(spot, gauge)));
        });
        name().ifPresent(name -> put(values, "name", new RawValue.Text(spot, name)));
        boolean proven =
                values.get("kind") instanceof RawValue.Text kind && kind.text().equals("document");
        if (OF_WORDS.contains(part.kind()) || proven) {
            put(values, "what", new RawValue.Text(spot, text));
        }
        part.count()
                .filter(count -> count > 1)
                .ifPresent(count -> put(values, "count", new RawValue.Number(spot, BigDecimal.valueOf(count))));
        if (withLimits) {
            limits(values, spot);
        }
        return new RawTable(table.spot(), values);
    }

    private Optional<String> name() {
        String line = text.strip().replace("\n", " ");
        return Optional.of(line).filter(name -> name.length() <= LONGEST_NAME);
    }

    private void limits(Map<String, RawValue> values, Spot spot) {
        String kind = values.get("kind") instanceof RawValue.Text written ? written.text() : "";
        if (part.kind() == CalloutKind.THREAD) {
            part.origin()
                    .filter(from -> kind.equals("thread-over-wires"))
                    .ifPresent(from -> put(values, "designation", new RawValue.Text(spot, from.designation())));
        } else if (part.frame().isPresent()) {
            frame(part.frame().get(), kind, values, spot);
        } else if (part.zone().isPresent()) {
            put(values, "nominal", new RawValue.Number(spot, part.nominal().orElseThrow()));
            put(values, "zone", new RawValue.Text(spot, part.zone().get().toString()));
        } else {
            part.unit()
                    .filter(unit -> kind.equals(ScaleCheck.KEY))
                    .ifPresent(unit -> put(values, "unit", new RawValue.Text(spot, unit.symbol())));
            part.rule()
                    .filter(rule -> kind.equals(ScaleCheck.KEY))
                    .ifPresent(rule -> put(values, "rule", new RawValue.Text(spot, rule.key())));
            part.limits().ifPresent(limits -> {
                limits.lower().ifPresent(lower -> put(values, "lower", value(spot, lower)));
                limits.upper().ifPresent(upper -> put(values, "upper", value(spot, upper)));
            });
        }
    }

    /** The zone, and what stands behind it; of what is proven elsewhere the zone alone. */
    private void frame(ToleranceFrame frame, String kind, Map<String, RawValue> values, Spot spot) {
        RawValue zone = new RawValue.Number(spot, part.upper().orElseThrow());
        switch (kind) {
            case IndicatedCheck.KEY -> {
                put(
                        values,
                        "movement_of",
                        new RawValue.Text(spot, MOVEMENTS.get(part.kind()).key()));
                if (!frame.datums().isEmpty()) {
                    put(values, "datum", new RawValue.Text(spot, String.join(" ", frame.datums())));
                }
                put(values, "limit", zone);
            }
            case PositionCheck.KEY -> {
                put(values, "zone", zone);
                put(values, "modifier", new RawValue.Text(spot, Word.of(frame.modifier())));
            }
            default -> put(values, "upper", zone);
        }
    }

    private static RawValue value(Spot spot, Written limit) {
        return limit.unit().hasMarksInside()
                ? new RawValue.Text(spot, limit.text())
                : new RawValue.Number(spot, limit.figure());
    }

    private static void put(Map<String, RawValue> values, String key, RawValue value) {
        values.putIfAbsent(key, value);
    }
}
