package org.tenthwise.app.series;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.PointQuery;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.SizeSummary;
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

    /** Every characteristic of a part number. */
    public List<Series> of(String part) {
        return of(PointQuery.ofPart(part));
    }

    /** The characteristics that are looked for, part number by part number, each in the order of the drawing. */
    public List<Series> of(PointQuery query) {
        Map<String, List<OfRun>> byKey = new LinkedHashMap<>();
        history.points(query, (run, step, size) -> byKey.computeIfAbsent(key(run, step, size), key -> new ArrayList<>())
                .add(new OfRun(run, step, size)));
        ToolsOfParts tools = new ToolsOfParts(history.toolChanges(query.part()));
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
