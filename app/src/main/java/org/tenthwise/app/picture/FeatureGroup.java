package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;

/**
 * The numbers of one feature, which share one leader line.
 *
 * @param numbers one or more, in the order of the list
 * @param side where they can stand
 */
record FeatureGroup(List<OutlinePicture.Numbered> numbers, OutlineFeature.Side side) {

    private static final Box ANY_SHEET = new Box(0, 0, 1000, 1000);

    FeatureGroup {
        numbers = List.copyOf(numbers);
    }

    /** In the order in which the features come in {@code numbers}. */
    static List<FeatureGroup> of(List<OutlinePicture.Numbered> numbers, Outline outline) {
        HalfSection section = new HalfSection(outline, ANY_SHEET);
        Map<List<Point>, List<OutlinePicture.Numbered>> byFeature = new LinkedHashMap<>();
        Map<List<Point>, OutlineFeature.Side> sides = new LinkedHashMap<>();
        for (OutlinePicture.Numbered number : numbers) {
            OutlineFeature feature = OutlineFeature.at(number.mark(), outline, section);
            byFeature.computeIfAbsent(feature.line(), line -> new ArrayList<>()).add(number);
            sides.put(feature.line(), feature.side());
        }
        return byFeature.entrySet().stream()
                .map(entry -> new FeatureGroup(entry.getValue(), sides.get(entry.getKey())))
                .toList();
    }

    FeatureGroup withoutLast() {
        return new FeatureGroup(numbers.subList(0, numbers.size() - 1), side);
    }

    int size() {
        return numbers.size();
    }

    List<Mark> marks() {
        return numbers.stream().map(OutlinePicture.Numbered::mark).toList();
    }
}
