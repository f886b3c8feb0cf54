package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Outline;

/**
 * Rows of numbered circles above and below a part, in the order of the features they mean. Where not all fit beside a
 * part that can still be made out, every feature keeps a number before any has two.
 */
final class Balloons {

    /** Share of the height that the part and its leaders keep. */
    private static final double LEAST_PART = 0.36;
    /** Between the part and the circles, in radii. */
    private static final double SLANT = 1;

    private static final double CLEAR = 4;
    private static final double RIM = 2;

    private final Box frame;
    private final double radius;
    private final double weight;
    private final BalloonRow row;
    private final List<FeatureGroup> top = new ArrayList<>();
    private final List<FeatureGroup> bottom = new ArrayList<>();

    /** @param weight 1 for the line weights of the screen */
    Balloons(Box frame, double radius, double weight, List<FeatureGroup> groups) {
        this.frame = frame;
        this.radius = radius;
        this.weight = weight;
        this.row = new BalloonRow(frame.left() + RIM, frame.right() - RIM, radius);
        share(groups);
        while (levels(top) + levels(bottom) > mostLevels()) {
            dropOne();
        }
    }

    private void share(List<FeatureGroup> groups) {
        groups.stream()
                .sorted(Comparator.comparing(group -> group.side() == OutlineFeature.Side.EITHER))
                .forEach(group -> {
                    boolean above = group.side() == OutlineFeature.Side.ABOVE
                            || group.side() == OutlineFeature.Side.EITHER && count(top) <= count(bottom);
                    (above ? top : bottom).add(group);
                });
    }

    private static int count(List<FeatureGroup> groups) {
        return groups.stream().mapToInt(FeatureGroup::size).sum();
    }

    private int levels(List<FeatureGroup> groups) {
        return row.levels(groups.stream().map(FeatureGroup::size).toList());
    }

    private int mostLevels() {
        return (int)
                Math.floor((frame.height() * (1 - LEAST_PART) - 2 * (SLANT * radius + CLEAR * weight)) / (2 * radius));
    }

    /** The last number of the feature that has most; of the longer row where all have one. */
    private void dropOne() {
        List<FeatureGroup> longer = count(top) >= count(bottom) ? top : bottom;
        FeatureGroup most = Stream.concat(top.stream(), bottom.stream())
                .max(Comparator.comparingInt(FeatureGroup::size))
                .orElseThrow();
        if (most.size() == 1) {
            longer.remove(longer.size() - 1);
        } else {
            (top.contains(most) ? top : bottom).replaceAll(group -> group == most ? most.withoutLast() : group);
        }
    }

    /** What is left for the part. */
    Box room() {
        double beyond = Leaders.beyond() * weight;
        return new Box(
                frame.left() + beyond,
                frame.top() + band(levels(top)),
                frame.right() - beyond,
                frame.bottom() - band(levels(bottom)));
    }

    private double band(int levels) {
        return CLEAR * weight + (levels == 0 ? 0 : RIM + (2 * levels + SLANT) * radius);
    }

    /** The circles that find a way to their feature. */
    List<BalloonRow.Placed> place(Outline outline, HalfSection section) {
        Leaders leaders = new Leaders(outline, section, weight);
        List<BalloonRow.Placed> placed = new ArrayList<>();
        for (boolean above : new boolean[] {true, false}) {
            List<FeatureGroup> groups = above ? top : bottom;
            double part =
                    above ? section.box().top() - CLEAR * weight : section.box().bottom() + CLEAR * weight;
            List<BalloonRow.Led> led = groups.stream()
                    .sorted(Comparator.comparingDouble(group -> breadth(group, outline, section)))
                    .flatMap(group -> led(leaders.way(group.marks(), above, part), group))
                    .sorted(Comparator.comparingDouble(BalloonRow.Led::x))
                    .toList();
            double edge = part + (above ? -SLANT : SLANT) * radius;
            placed.addAll(row.place(led, Math.max(1, levels(groups)), edge, above));
        }
        return placed;
    }

    /** A narrow feature has few places for a leader, so that it chooses first. */
    private static double breadth(FeatureGroup group, Outline outline, HalfSection section) {
        OutlineFeature feature = OutlineFeature.at(group.marks().get(0), outline, section);
        return feature.bounds().width();
    }

    private static Stream<BalloonRow.Led> led(Optional<List<Point>> way, FeatureGroup group) {
        List<String> numbers =
                group.numbers().stream().map(OutlinePicture.Numbered::number).toList();
        return way.map(found -> new BalloonRow.Led(numbers, found)).stream();
    }
}
