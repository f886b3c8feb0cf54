package org.tenthwise.checklists.editing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.words.Word;

/**
 * Numbers the steps of a plan by the order they stand in. Where the number on the drawing was told by the place in the
 * order, it is written out before the place changes; what names a step by its number names it by the new one.
 */
public final class WorkOrder {

    private static final String STEP = "step";
    private static final String NUMBER = "number";
    private static final String BALLOON = "balloon";
    private static final String HOLD = "hold";
    private static final String NAMES = "names";
    /** Keys that end so name a step, but for the step of the register. */
    private static final String OF_A_STEP = "_step";

    private static final String OF_THE_REGISTER = "offset_step";
    /** A whole number as a value, not one in a name. */
    private static final Pattern WHOLE = Pattern.compile("(?<=^|[\\[,=\\s])\\d{1,9}(?=$|[\\s,\\]}#])");

    private final PlanText plan;

    public WorkOrder(PlanText plan) {
        this.plan = plan;
    }

    /**
     * The plan with numbers that rise from 1 by one; as it is where they rise already. A step without a number, as a
     * copy is, takes none away from another.
     */
    public PlanText numbered() {
        List<TableText> steps = plan.list(STEP);
        List<Optional<Integer>> old = steps.stream().map(WorkOrder::number).toList();
        if (rise(old)) {
            return plan;
        }
        boolean balloonsTold =
                steps.stream().anyMatch(step -> step.value(BALLOON).isPresent());
        Map<Integer, Integer> now = new HashMap<>();
        IntStream.range(0, old.size()).forEach(at -> old.get(at).ifPresent(number -> now.putIfAbsent(number, at + 1)));
        PlanText numbered = plan;
        for (int at = 0; at < steps.size(); at++) {
            int place = at + 1;
            Optional<Integer> before = old.get(at);
            boolean writesBalloon = !balloonsTold && before.isPresent() && isOfTheDrawing(steps.get(at));
            numbered = numbered.with(STEP, at, step -> {
                TableText placed = naming(step, now).withAfter(List.of(), NUMBER, TomlValue.number(place));
                return writesBalloon
                        ? placed.withAfter(List.of(NUMBER), BALLOON, TomlValue.text(String.valueOf(before.get())))
                        : placed;
            });
        }
        return numbered;
    }

    /**
     * The plan with those steps from {@code place} on, numbered with the others. They name each other by the numbers
     * they come with; a number that none of them has would be that of a strange check, and is left out.
     *
     * @param steps whose numbers, where they have none, are their places from 1
     */
    PlanText inserted(int place, List<TableText> steps) {
        Map<Integer, Integer> own = new HashMap<>();
        PlanText placed = plan;
        for (int i = 0; i < steps.size(); i++) {
            own.put(number(steps.get(i)).orElse(i + 1), place + i + 1);
            placed = placed.inserted(STEP, place + i, steps.get(i).without(NUMBER));
        }
        PlanText numbered = new WorkOrder(placed).numbered();
        for (int i = 0; i < steps.size(); i++) {
            int number = place + i + 1;
            TableText named = naming(withoutStrangers(steps.get(i), own.keySet()), own);
            numbered = numbered.with(STEP, place + i, step -> named.without(NUMBER)
                    .withAfter(List.of(), NUMBER, TomlValue.number(number)));
        }
        return numbered;
    }

    private static TableText withoutStrangers(TableText step, Set<Integer> own) {
        TableText known = step;
        for (String key : step.keys()) {
            if (!namesSteps(key)) {
                continue;
            }
            List<Integer> named = WHOLE.matcher(step.value(key).orElseThrow())
                    .results()
                    .map(found -> Integer.valueOf(found.group()))
                    .toList();
            List<String> ours =
                    named.stream().filter(own::contains).map(TomlValue::number).toList();
            if (ours.size() < named.size()) {
                known = key.equals(HOLD) && !ours.isEmpty()
                        ? known.with(key, TomlValue.list(ours))
                        : known.without(key);
            }
        }
        return known;
    }

    private static boolean namesSteps(String key) {
        return key.equals(HOLD)
                || key.equals(NAMES)
                || key.startsWith(NAMES + ".")
                || key.endsWith(OF_A_STEP) && !key.equals(OF_THE_REGISTER);
    }

    /** Where the plan is silent a confirmation is set-up, and everything else of the drawing. */
    private static boolean isOfTheDrawing(TableText step) {
        return step.value("class")
                .map(told -> told.equals(TomlValue.text(Word.of(StepClass.DRAWING))))
                .orElseGet(() -> !step.value("kind").equals(Optional.of(TomlValue.text(AskedCheck.Confirm.KEY))));
    }

    private static boolean rise(List<Optional<Integer>> numbers) {
        return numbers.stream().allMatch(Optional::isPresent)
                && IntStream.range(1, numbers.size())
                        .allMatch(at -> numbers.get(at).orElseThrow()
                                > numbers.get(at - 1).orElseThrow());
    }

    /** Absent for one that has none, or something else there. */
    private static Optional<Integer> number(TableText step) {
        return step.value(NUMBER)
                .map(String::strip)
                .filter(written -> written.matches("\\d{1,9}"))
                .map(Integer::valueOf);
    }

    private static TableText naming(TableText step, Map<Integer, Integer> now) {
        TableText naming = step;
        for (String key : step.keys()) {
            if (namesSteps(key)) {
                naming = naming.with(
                        key,
                        WHOLE.matcher(step.value(key).orElseThrow())
                                .replaceAll(found -> String.valueOf(now.getOrDefault(
                                        Integer.valueOf(found.group()), Integer.valueOf(found.group())))));
            }
        }
        return naming;
    }
}
