package org.tenthwise.model.compare;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Word;

/**
 * What a plan or a step says, by aspect: what it means, so that it can be compared, and how it is written.
 *
 * <p>It is gathered from the components of the records of the model, whatever they are: what a new kind of check has is
 * compared without being named here, and counts as a requirement until {@link Aspect} knows better. Other steps are
 * told by what they are called, not by their numbers, so that another order of work changes nothing.
 */
final class PlanMeaning {

    private static final Set<String> NOT_COMPARED =
            Set.of("number", "issue", "issues", "source", "steps", "operations");
    private static final Set<String> OTHER_STEPS = Set.of("hold", "cutWith", "restsOn", "step");
    private static final Pattern FIGURE = Pattern.compile("\\d*\\.?\\d+");

    private record Leaf(String path, Object means, String written) {}

    private final IntFunction<String> otherStep;
    private final Map<Aspect, List<Leaf>> leaves = new EnumMap<>(Aspect.class);

    private PlanMeaning(IntFunction<String> otherStep) {
        this.otherStep = otherStep;
    }

    /** What stands at the head of a plan; its steps and their operations are compared for themselves. */
    static PlanMeaning ofHead(Plan plan) {
        PlanMeaning meaning = new PlanMeaning(String::valueOf);
        meaning.components("", plan, NOT_COMPARED);
        return meaning;
    }

    /** @param otherStep what to call a step that this one names by its number */
    static PlanMeaning of(Plan plan, Step step, IntFunction<String> otherStep) {
        PlanMeaning meaning = new PlanMeaning(otherStep);
        meaning.components("", step, Set.of("number", "operation"));
        meaning.add("kind", step.check().key());
        meaning.add(
                "operation",
                step.operation() + " " + plan.operation(step.operation()).name());
        return meaning;
    }

    /** What is otherwise in {@code after}, in the order of the aspects. */
    List<PlanDifference> differences(PlanMeaning after) {
        Set<Aspect> aspects = EnumSet.noneOf(Aspect.class);
        aspects.addAll(leaves.keySet());
        aspects.addAll(after.leaves.keySet());
        return aspects.stream()
                .filter(aspect -> !of(aspect).equals(after.of(aspect)))
                .map(aspect -> new PlanDifference(
                        means(aspect).equals(after.means(aspect)) ? ChangeKind.AS_WRITTEN : aspect.kind(),
                        aspect,
                        written(aspect),
                        after.written(aspect)))
                .toList();
    }

    private List<Leaf> of(Aspect aspect) {
        return leaves.getOrDefault(aspect, List.of());
    }

    private List<List<Object>> means(Aspect aspect) {
        return of(aspect).stream()
                .map(leaf -> List.of(leaf.path(), leaf.means()))
                .toList();
    }

    private String written(Aspect aspect) {
        return of(aspect).stream()
                .map(Leaf::written)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private void components(String path, Record record, Set<String> but) {
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            if (!but.contains(component.getName())) {
                add(path.isEmpty() ? component.getName() : path + "." + component.getName(), value(component, record));
            }
        }
    }

    private static Object value(RecordComponent component, Record record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("What %s says cannot be asked".formatted(component), e);
        }
    }

    private void add(String path, Object value) {
        leaves(path, value).forEach(leaf -> leaves.computeIfAbsent(Aspect.of(leaf.path()), of -> new ArrayList<>())
                .add(leaf));
    }

    private List<Leaf> leaves(String path, Object value) {
        if (value instanceof Optional<?> any) {
            return any.map(one -> leaves(path, one)).orElse(List.of());
        }
        if (value instanceof List<?> several) {
            return several.isEmpty() ? List.of() : List.of(listed(path, several));
        }
        if (isScalar(value)) {
            return value.equals("") ? List.of() : List.of(scalar(path, value));
        }
        Record record = (Record) value;
        List<Leaf> inside = new ArrayList<>();
        if (record.getClass().getEnclosingClass() != null) { // one of several ways, told by its name
            String way = record.getClass().getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-");
            inside.add(new Leaf(path, way, way.toLowerCase(Locale.ROOT)));
        }
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            inside.addAll(leaves(path + "." + component.getName(), value(component, record)));
        }
        return inside;
    }

    private Leaf listed(String path, List<?> several) {
        List<List<Leaf>> each = several.stream().map(one -> leaves(path, one)).toList();
        return new Leaf(
                path,
                each.stream()
                        .map(one -> one.stream()
                                .map(leaf -> List.of(leaf.path(), leaf.means()))
                                .toList())
                        .toList(),
                each.stream()
                        .map(one -> one.stream().map(Leaf::written).collect(Collectors.joining(" ")))
                        .collect(Collectors.joining(", ")));
    }

    private static boolean isScalar(Object value) {
        return !(value instanceof Record)
                || value instanceof Written
                || value instanceof Length
                || value instanceof GaugeKind
                || value instanceof Unit
                || value instanceof Message;
    }

    private Leaf scalar(String path, Object value) {
        if (value instanceof Written written) {
            return new Leaf(
                    path, List.of(plain(written.length().base()), written.unit().symbol()), written.toString());
        }
        if (value instanceof Length length) {
            return new Leaf(path, plain(length.base()), plain(length.base()));
        }
        if (value instanceof BigDecimal figure) {
            return new Leaf(path, plain(figure), figure.toPlainString());
        }
        if (value instanceof GaugeKind kind) {
            return new Leaf(path, kind.key(), kind.key());
        }
        if (value instanceof Unit unit) {
            return new Leaf(path, unit.symbol(), unit.symbol());
        }
        if (value instanceof Enum<?> choice) {
            return new Leaf(path, choice, Word.of(choice));
        }
        if (value instanceof Integer number && isOtherStep(path)) {
            return new Leaf(path, otherStep.apply(number), otherStep.apply(number));
        }
        if (value instanceof Message message) { // where a figure was taken from: its key tells it, not a sentence
            return new Leaf(path, message, "");
        }
        String text = value.toString().strip().replaceAll("\\s+", " ");
        return new Leaf(path, path.equals("drawing.requirement") ? asDrawn(text) : text, text);
    }

    private static boolean isOtherStep(String path) {
        String name = path.substring(path.lastIndexOf('.') + 1);
        return OTHER_STEPS.contains(name) || name.endsWith("Step") || name.endsWith("Steps");
    }

    private static String plain(BigDecimal figure) {
        return figure.stripTrailingZeros().toPlainString();
    }

    /** Words of a drawing without what means nothing in them: blanks, capitals, noughts behind a figure. */
    private static String asDrawn(String text) {
        return FIGURE.matcher(text.replace(" ", "").toLowerCase(Locale.ROOT))
                .replaceAll(figure -> plain(new BigDecimal(figure.group())));
    }
}
