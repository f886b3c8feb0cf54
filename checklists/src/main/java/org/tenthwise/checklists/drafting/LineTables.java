package org.tenthwise.checklists.drafting;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.checklists.editing.ValueText;
import org.tenthwise.checklists.rules.PlanChoices;
import org.tenthwise.model.callout.Callout;
import org.tenthwise.model.callout.CalloutKind;
import org.tenthwise.model.callout.CalloutPart;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Word;

/** The tables of a plan that a line of a list becomes: one for each part of what is drawn there. */
final class LineTables {

    private static final String STEP = "step";
    private static final String NOTE = "note";
    private static final String PROCESS = "process";
    private static final String ELSEWHERE = "elsewhere";
    private static final String KIND = "kind";

    private static final Set<CalloutKind> NOT_INSPECTED =
            EnumSet.of(CalloutKind.REFERENCE, CalloutKind.BASIC, CalloutKind.BASIC_ANGLE);
    /** A list tells no coordinates to measure a position by. */
    private static final Set<String> PROVEN_ELSEWHERE = Set.of("document", PositionCheck.KEY);

    private final ListLine line;
    private final Callout callout;
    private final String number;
    private final Unit unit;
    private final ListedFigures figures;

    /**
     * @param unit of the drawing
     * @throws Refused if the figures of the line contradict one another
     */
    LineTables(ListLine line, Callout callout, String number, Unit unit) {
        this.unit = unit;
        this.line = line;
        this.callout = callout;
        this.number = number;
        this.figures = ListedFigures.of(line);
    }

    /** Whether a table stands in the order of work. */
    static boolean isInOrder(TableText table) {
        return List.of(STEP, NOTE).contains(table.name());
    }

    /** @throws Refused if nothing is inspected there, or the list and the drawing differ */
    List<TableText> made() {
        List<CalloutPart> parts = callout.parts();
        CalloutPart first = parts.get(0);
        if (parts.stream().allMatch(part -> NOT_INSPECTED.contains(part.kind()))) {
            throw new Refused("draft.not-inspected", first.kind().named());
        }
        parts.stream()
                .flatMap(part -> part.unit().stream())
                .filter(other -> other.kind().equals(QuantityKind.LENGTH) && other != unit)
                .findFirst()
                .ifPresent(other -> {
                    throw new Refused("draft.unit", other, unit);
                });
        if (!figures.isEmpty() && parts.size() > 1) {
            throw new Refused("draft.figures-of-which");
        }
        figures.mustAgreeWith(first);
        count(first);
        return IntStream.range(0, parts.size())
                .filter(at -> !NOT_INSPECTED.contains(parts.get(at).kind()))
                .mapToObj(at -> table(parts.get(at), parts.size() > 1 ? "%s.%s".formatted(number, at + 1) : number))
                .toList();
    }

    /** How many alike, where the list says so. */
    private Optional<Integer> count(CalloutPart part) {
        Optional<Integer> listed = line.at(ListColumn.COUNT)
                .map(text -> text.replaceAll("(?i)\\s*[x×]$", ""))
                .map(text -> {
                    if (!text.matches("[1-9]\\d{0,3}")) {
                        throw new Refused("draft.no-figure", ListColumn.COUNT, text);
                    }
                    return Integer.valueOf(text);
                });
        Optional<Integer> drawn = part.count().filter(count -> count > 1);
        if (listed.isPresent() && drawn.isPresent() && !listed.equals(drawn)) {
            throw new Refused("draft.count-differs", drawn.get(), listed.get());
        }
        return drawn.isPresent() ? Optional.empty() : listed.filter(count -> count > 1);
    }

    private TableText table(CalloutPart part, String balloon) {
        String name = kindOfTable(part);
        TableText table = TableText.ofList(name);
        boolean isProcess = name.equals(PROCESS);
        table = table.with("balloon", TomlValue.text(balloon));
        table = with(table, "sheet", ListColumn.SHEET);
        table = with(table, "drawing_zone", ListColumn.ZONE);
        table = with(table, "designator", ListColumn.DESIGNATOR);
        for (ListColumn beside : besides(name)) {
            table = line.at(beside).isPresent()
                    ? table.remarked(Word.of(beside) + ": " + line.at(beside).get())
                    : table;
        }
        if (isProcess) {
            return table.with("name", TomlValue.text(callout.text()));
        }
        table = table.with("requirement", TomlValue.text(callout.text()));
        Optional<Integer> count = count(part);
        table = count.isPresent() ? table.with("count", TomlValue.number(count.get())) : table;
        return switch (name) {
            case NOTE ->
                table.with(KIND, TomlValue.text("look"))
                        .with("name", TomlValue.text(callout.text()))
                        .with("what", TomlValue.text(callout.text()));
            case ELSEWHERE -> elsewhere(table, part);
            default -> step(table, part);
        };
    }

    private TableText with(TableText table, String key, ListColumn column) {
        return line.at(column)
                .map(cell -> table.with(key, TomlValue.text(cell)))
                .orElse(table);
    }

    /** What no key of such a table takes as it is written: it stands above it, for whoever goes on with it. */
    private static List<ListColumn> besides(String table) {
        return table.equals(STEP)
                ? List.of(ListColumn.GAUGE, ListColumn.NOTE)
                : List.of(ListColumn.OPERATION, ListColumn.METHOD, ListColumn.GAUGE, ListColumn.NOTE);
    }

    private String kindOfTable(CalloutPart part) {
        if (line.at(ListColumn.WHERE).isPresent()) {
            return ELSEWHERE;
        }
        if (part.kind() == CalloutKind.NOTE || part.kind() == CalloutKind.PROCESS) {
            return part.kind() == CalloutKind.NOTE ? NOTE : PROCESS;
        }
        return PlanChoices.kindOf(part).filter(PROVEN_ELSEWHERE::contains).isPresent() ? ELSEWHERE : STEP;
    }

    /** Where it is proven is left open where the list does not say. */
    private TableText elsewhere(TableText table, CalloutPart part) {
        TableText named = table.with("name", TomlValue.text(callout.text()));
        Optional<String> where = line.at(ListColumn.WHERE);
        TableText placed = where.isPresent() ? named.with("where", TomlValue.text(where.get())) : named;
        return part.unit().filter(Unit::isOfAngle).isPresent()
                ? placed
                : withLimits(placed, part.lower().filter(limit -> limit.signum() > 0), part.upper());
    }

    private TableText step(TableText table, CalloutPart part) {
        TableText step = table;
        Optional<String> operation = line.at(ListColumn.OPERATION);
        step = operation.isPresent() ? step.with("operation", ValueText.written("operation", operation.get())) : step;
        step = with(step, "method", ListColumn.METHOD);
        if (callout.parts().size() == 1) {
            return part.hasLimits() ? step : withLimits(step, figures.lower(), figures.upper());
        }
        Optional<String> kind = PlanChoices.kindOf(part);
        step = kind.isPresent() ? step.with(KIND, TomlValue.text(kind.get())) : step;
        if (part.kind() == CalloutKind.THREAD) {
            return part.hasLimits() ? step : withLimits(step, figures.lower(), figures.upper());
        }
        Optional<String> feature = PlanChoices.featureOf(part);
        step = feature.isPresent() ? step.with("feature", TomlValue.text(feature.get())) : step;
        return withLimitsOf(
                step.with(
                        "name",
                        TomlValue.text(
                                "%s (%s)".formatted(callout.text(), part.kind().key()))),
                part);
    }

    /** With the limits of a part, an angle in minutes and seconds with its marks. */
    private static TableText withLimitsOf(TableText table, CalloutPart part) {
        TableText with = table;
        for (Limit which : Limit.values()) {
            Optional<Written> limit = part.limits().flatMap(limits -> limits.at(which));
            with = limit.isPresent() ? with.with(Word.of(which), written(limit.get())) : with;
        }
        return with;
    }

    private static String written(Written limit) {
        return limit.unit().hasMarksInside() ? TomlValue.text(limit.text()) : TomlValue.number(limit.figure());
    }

    private static TableText withLimits(TableText table, Optional<BigDecimal> lower, Optional<BigDecimal> upper) {
        TableText with = lower.isPresent() ? table.with("lower", TomlValue.number(lower.get())) : table;
        return upper.isPresent() ? with.with("upper", TomlValue.number(upper.get())) : with;
    }
}
