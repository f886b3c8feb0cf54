package org.tenthwise.app.series;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.SizeSummary;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;
import org.tenthwise.app.history.StepSummary;

/**
 * Follows characteristics over runs and issues of plans: by their balloon, by balloon and name where several steps are
 * of one balloon, and by number and name where the plan names none.
 */
public final class Followed {

    private final History history;

    public Followed(History history) {
        this.history = history;
    }

    /** What was found of a characteristic in one run. */
    record OfRun(RunFacts run, StepSummary step, SizeSummary size) {}

    /** Part numbers that were worked on, the one last worked on first. */
    public List<String> parts() {
        return history.parts();
    }

    /** The characteristics that are looked for, part number by part number, each in the order of the drawing. */
    public List<Series> of(Sought sought) {
        Map<String, List<OfRun>> byKey = new LinkedHashMap<>();
        history.points(
                sought, (run, step, size) -> byKey.computeIfAbsent(key(run, step, size), key -> new ArrayList<>())
                        .add(new OfRun(run, step, size)));
        ToolsOfParts tools = new ToolsOfParts(history.toolChanges(sought.of(SoughtBy.PART_NUMBER)));
        return byKey.values().stream()
                .map(found -> SeriesOrder.series(found, tools))
                .sorted(Comparator.comparing(
                                (Series series) -> series.characteristic().part())
                        .thenComparing(Series::characteristic, Characteristic.OF_DRAWING))
                .toList();
    }

    private static String key(RunFacts run, StepSummary step, SizeSummary size) {
        String number = String.valueOf(step.number());
        return String.join(
                        "\n",
                        switch (size.followedBy()) {
                            case BALLOON ->
                                List.of(run.part(), "", step.balloon().orElse(number));
                            case BALLOON_AND_NAME ->
                                List.of(run.part(), "", step.balloon().orElse(number), step.name());
                            case NUMBER_AND_NAME -> List.of(run.part(), number, step.name());
                        })
                .toLowerCase(Locale.ROOT);
    }
}
