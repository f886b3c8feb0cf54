package org.tenthwise.model.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.plan.Step;

/**
 * The hold points of one run as it goes on. What settled a step is worked out again only when the step was judged
 * again; a run of some thousand entries could otherwise not be shown at every reading.
 */
public final class HoldPoints {

    private final Map<Integer, Settled> known = new HashMap<>();

    /** Of which nothing is known yet. */
    public HoldPoints() {}

    /**
     * How a hold point was opened; absent while a step it waits for is not settled, and for a step that is none.
     *
     * @param sheet of the same run each time
     */
    public Optional<HoldOpened> opened(Sheet sheet, Step hold) {
        List<Settled> all = new ArrayList<>();
        for (int number : hold.hold()) {
            Optional<Settled> settled = settled(sheet, number);
            if (settled.isEmpty()) {
                return Optional.empty();
            }
            all.add(settled.get());
        }
        return all.isEmpty() ? Optional.empty() : Optional.of(new HoldOpened(all));
    }

    /** Those that were opened, each with how, by the number of its step. */
    public Map<Integer, HoldOpened> opened(Sheet sheet) {
        Map<Integer, HoldOpened> opened = new HashMap<>();
        for (Step step : sheet.plan().steps()) {
            opened(sheet, step).ifPresent(how -> opened.put(step.number(), how));
        }
        return opened;
    }

    private Optional<Settled> settled(Sheet sheet, int step) {
        Line line = sheet.line(step);
        Settled before = known.get(step);
        if (before != null && isTheSame(before.line(), line)) {
            return Optional.of(before);
        }
        Optional<Settled> now = Settled.of(sheet, line);
        now.ifPresentOrElse(found -> known.put(step, found), () -> known.remove(step));
        return now;
    }

    /** A line judged again has another finding, be it an equal one. */
    private static boolean isTheSame(Line before, Line now) {
        return before.finding() == now.finding();
    }
}
