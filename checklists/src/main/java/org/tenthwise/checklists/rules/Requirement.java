package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.callout.Callout;
import org.tenthwise.model.callout.CalloutPart;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.compute.roughness.AcceptanceRule;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.IndicatedCheck;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.ScaleCheck;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.tolerance.Origin;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Word;

/**
 * The words of the drawing of a step, read. What the step leaves out of kind, limits, count, gauge and name follows
 * from them; what it says besides must agree. Words that cannot be read are a remark of the drawing, unless a step
 * leans on them.
 */
final class Requirement {

    static final String KEY = "requirement";

    private static final String KIND = "kind";
    private static final String FEATURE = "feature";
    private static final String COUNT = "count";
    private static final String RULE = "rule";
    private static final String MODIFIER = "modifier";
    private static final List<String> LIMITS =
            List.of("lower", "upper", "zone", "nominal", "plus_minus", "designation", "form", "limit");
    private static final List<String> BETWEEN_LIMITS =
            List.of("bore", "width", "diameter", "depth", "size", "angle", "thread-over-wires", ScaleCheck.KEY);
    /** Whose zone the drawing gives in a frame. */
    private static final List<String> IN_A_ZONE = List.of(IndicatedCheck.KEY, PositionCheck.KEY);

    private final RawTable table;
    private final Unit unit;
    private final Optional<String> text;
    private Optional<Refused> refused = Optional.empty();
    private List<CalloutPart> parts = List.of();

    /** @param reader of the drawing of the plan */
    Requirement(RawTable table, CalloutReader reader) {
        this.table = table;
        this.unit = reader.ofDrawing();
        this.text = text(KEY).filter(words -> !words.isBlank());
        text.ifPresent(words -> read(words, reader));
    }

    private void read(String words, CalloutReader reader) {
        try {
            Callout callout = reader.read(words);
            parts = callout.parts();
        } catch (Refused e) {
            refused = Optional.of(e);
        }
    }

    private Optional<String> text(String key) {
        return table.values().get(key) instanceof RawValue.Text written
                ? Optional.of(written.text())
                : Optional.empty();
    }

    /** Whether the step leaves to it what it is, or its limits. */
    private boolean isLeantOn() {
        boolean measured = text(KIND)
                .filter(kind -> BETWEEN_LIMITS.contains(kind) || IN_A_ZONE.contains(kind))
                .isPresent();
        return text.isPresent() && (!table.values().containsKey(KIND) || measured && isWithoutLimits());
    }

    private boolean isWithoutLimits() {
        return LIMITS.stream().noneMatch(table.values()::containsKey);
    }

    /** The part the step is of: the only one, or the only one that its kind can be of where it says one. */
    private Optional<CalloutPart> part() {
        List<CalloutPart> meant = meant();
        return meant.size() == 1 ? Optional.of(meant.get(0)) : Optional.empty();
    }

    private List<CalloutPart> meant() {
        return text(KIND)
                .map(kind -> parts.stream()
                        .filter(part -> CheckOfCallout.canBe(kind, text(FEATURE), part))
                        .toList())
                .orElse(parts);
    }

    /** The table with what follows; as it was where the step does not lean on the words, or they cannot be read. */
    RawTable completed() {
        Optional<CalloutPart> part = isLeantOn() ? part() : Optional.empty();
        return part.map(read -> new CheckOfCallout(read, text.orElseThrow(), text(KIND))
                        .completed(table, KEY, isWithoutLimits()))
                .orElse(table);
    }

    /** From what the limits of the step were worked out, where they follow from the words and a general tolerance. */
    Optional<Origin> origin() {
        return isLeantOn() && isWithoutLimits()
                ? part().filter(read -> read.zone().isEmpty()).flatMap(CalloutPart::origin)
                : Optional.empty();
    }

    /** What of the words is in doubt, where the step leans on them; and the unit of another drawing. */
    void judge(TableKeys keys) {
        if (!isLeantOn()) {
            return;
        }
        refused.ifPresent(why -> keys.problem(KEY, "plan.requirement.refused", why.why()));
        if (refused.isEmpty() && part().isEmpty()) {
            keys.problem(
                    KEY,
                    meant().isEmpty() ? "plan.requirement.other-kind" : "plan.requirement.several",
                    kinds(),
                    text(KIND).orElse(""));
        }
        part().filter(read -> !table.values().containsKey(KIND)
                        && CheckOfCallout.kind(read).isEmpty())
                .ifPresent(read -> keys.problem(
                        KEY, CheckOfCallout.whyNoKind(read), read.kind().named()));
        part().flatMap(CalloutPart::limits)
                .filter(limits -> limits.unit().isOfLength() && limits.unit() != unit)
                .ifPresent(limits -> keys.problem(KEY, "plan.requirement.unit", limits.unit(), unit));
        part().filter(read -> isWithoutLimits() && !read.hasLimits() && CheckOfCallout.needsLimits(read))
                .ifPresent(read -> keys.problem(KEY, "plan.requirement.no-limits"));
    }

    /** Whether what the step says besides agrees; in process a size may still be on its way. */
    void judge(TableKeys keys, Check check, StepClass stepClass) {
        if (stepClass != StepClass.DRAWING || parts.isEmpty()) {
            return;
        }
        if (text(KIND).map(BETWEEN_LIMITS::contains).orElse(true)) {
            check.asDimension().flatMap(CheckOfDimension::limitsOfASize).ifPresent(limits -> judge(keys, limits));
            judgeRule(keys);
        }
        if (IN_A_ZONE.contains(check.key())) {
            check.judgedAgainst().ifPresent(zone -> judgeZone(keys, zone));
            judgeModifier(keys);
        }
        Optional<Integer> drawn = parts.get(0).count().filter(count -> count > 1);
        keys.wholeIfSound(COUNT)
                .filter(count -> drawn.filter(other -> !other.equals(count)).isPresent())
                .ifPresent(
                        count -> keys.problemUnlessKept(COUNT, "plan.requirement.count", drawn.orElseThrow(), count));
    }

    /** By the easier rule a surface would be accepted that the drawing refuses. */
    private void judgeRule(TableKeys keys) {
        parts.get(0)
                .rule()
                .map(AcceptanceRule::key)
                .filter(drawn -> text(RULE).filter(said -> !said.equals(drawn)).isPresent())
                .ifPresent(drawn -> keys.problemUnlessKept(
                        RULE, "plan.requirement.rule", drawn, text(RULE).orElseThrow()));
    }

    private void judgeZone(TableKeys keys, Limits zone) {
        List<Limits> drawn = parts.stream()
                .filter(part -> part.frame().isPresent())
                .flatMap(part -> part.limits().stream())
                .toList();
        if (!drawn.isEmpty()
                && drawn.stream().noneMatch(other -> other.upper()
                        .map(Written::length)
                        .equals(zone.upper().map(Written::length)))) {
            keys.problemUnlessKept(KEY, "plan.requirement.disagrees", said(drawn.get(0)), said(zone));
        }
    }

    /** A bonus that the drawing does not give passes a hole that is out of place. */
    private void judgeModifier(TableKeys keys) {
        parts.get(0)
                .frame()
                .map(frame -> Word.of(frame.modifier()))
                .filter(drawn ->
                        text(MODIFIER).filter(said -> !said.equals(drawn)).isPresent())
                .ifPresent(drawn -> keys.problemUnlessKept(
                        MODIFIER,
                        "plan.requirement.modifier",
                        drawn,
                        text(MODIFIER).orElseThrow()));
    }

    /** Figures that are the same by chance do not make a radius a diameter. */
    private void judge(TableKeys keys, Limits limits) {
        List<Limits> drawn = limitsAlike(parts, limits);
        List<Limits> ofTheKind = limitsAlike(meant(), limits);
        if (!drawn.isEmpty() && ofTheKind.isEmpty()) {
            keys.problemUnlessKept(
                    KEY, "plan.requirement.other-kind", kinds(), text(KIND).orElse(""));
        } else if (!drawn.isEmpty() && ofTheKind.stream().noneMatch(other -> isSame(limits, other))) {
            keys.problemUnlessKept(KEY, "plan.requirement.disagrees", said(ofTheKind.get(0)), said(limits));
        }
    }

    private static List<Limits> limitsAlike(List<CalloutPart> parts, Limits limits) {
        return parts.stream()
                .flatMap(part -> part.limits().stream())
                .filter(other -> other.unit().kind().equals(limits.unit().kind()))
                .toList();
    }

    private List<Message> kinds() {
        return parts.stream().map(part -> part.kind().named()).toList();
    }

    private static boolean isSame(Limits one, Limits other) {
        return one.lower().map(Written::length).equals(other.lower().map(Written::length))
                && one.upper().map(Written::length).equals(other.upper().map(Written::length));
    }

    /** What was read, for whoever looks before it counts; absent where the step does not lean on the words. */
    Optional<Message> said(Check check) {
        return isLeantOn()
                ? part().map(read -> Message.of(
                        "plan.requirement.read",
                        text.orElseThrow().replace("\n", " / "),
                        read.kind().named(),
                        check.judgedAgainst()
                                .map(Requirement::saidWithOrigin)
                                .orElse(Message.of("plan.requirement.no-figures")),
                        text(KIND).or(() -> CheckOfCallout.kind(read)).orElse("")))
                : Optional.empty();
    }

    private static Message saidWithOrigin(Limits limits) {
        Message figures = said(limits);
        return limits.origin()
                .map(from -> Message.of("plan.requirement.from", figures, from.designation(), from.standard()))
                .orElse(figures);
    }

    private static Message said(Limits limits) {
        if (limits.lower().isEmpty()) {
            return Message.of("plan.requirement.at-most", limits.upper().orElseThrow());
        }
        return limits.upper()
                .map(upper -> Message.of(
                        "plan.requirement.between", limits.lower().get().text(), upper))
                .orElseGet(() ->
                        Message.of("plan.requirement.at-least", limits.lower().get()));
    }
}
