package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tenthwise.model.quantity.Length;

/** Looks at what was drawn of a part with numbered features, and works out itself where on the sheet a feature is. */
final class BalloonOracle {

    /** Pixels by which a drawn line may miss what it means. */
    private static final double MISS = 1.6;

    private record Rim(String number, Point centre, double radius) {}

    private final RandomOutline part;
    private final RecordingPen pen;
    private final Frame frame;
    private final List<Rim> rims = new ArrayList<>();
    private final List<List<Point>> leaders = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();
    private double left;
    private double axis;
    private double scale;
    private Box drawn;

    BalloonOracle(RandomOutline part, RecordingPen pen, Frame frame) {
        this.part = part;
        this.pen = pen;
        this.frame = frame;
        read();
    }

    private void read() {
        double thin = Stroke.THIN.times(frame.lineScale()).width();
        double thick = Stroke.OUTLINE.times(frame.lineScale()).width();
        List<Box> outline = new ArrayList<>();
        for (RecordingPen.Drawn mark : pen.drawn()) {
            if (mark.shape() instanceof Shape.Circle rim && mark.width() > 0) {
                pen.lettered().stream()
                        .filter(text -> rim.centre()
                                        .distanceTo(new Point(
                                                text.box().centreX(), text.box().centreY()))
                                < rim.radius() / 2)
                        .findFirst()
                        .ifPresentOrElse(
                                text -> rims.add(new Rim(text.text(), rim.centre(), rim.radius())),
                                () -> faults.add("an empty circle at " + rim.centre()));
            } else if (mark.shape() instanceof Shape.Polyline line && mark.dashed()) {
                axis = line.bounds().centreY();
            } else if (mark.shape() instanceof Shape.Polyline line && mark.width() == thin) {
                leaders.add(line.points());
            } else if (mark.width() == thick) {
                outline.add(mark.shape().bounds());
            }
        }
        drawn = new Box(
                outline.stream().mapToDouble(Box::left).min().orElseThrow(),
                outline.stream().mapToDouble(Box::top).min().orElseThrow(),
                outline.stream().mapToDouble(Box::right).max().orElseThrow(),
                outline.stream().mapToDouble(Box::bottom).max().orElseThrow());
        left = drawn.left();
        scale = drawn.width() / millimetres(part.outline().length());
    }

    int shown() {
        return rims.size();
    }

    List<String> faults() {
        faults.addAll(pen.faults(frame));
        Map<Integer, RandomOutline.Feature> meant = new HashMap<>();
        for (Rim rim : rims) {
            int leader = leaderOf(rim, new ArrayList<>());
            if (leader < 0) {
                faults.add(rim.number() + " has no leader");
                continue;
            }
            RandomOutline.Feature feature = featureOf(rim.number());
            RandomOutline.Feature other = meant.putIfAbsent(leader, feature);
            if (other != null && !other.equals(feature)) {
                faults.add(rim.number() + " shares a leader with another feature");
            }
            if (!isOn(feature, leaders.get(leader).get(0))) {
                faults.add("%s starts at %s, off its %s"
                        .formatted(rim.number(), leaders.get(leader).get(0), feature));
            }
        }
        apart();
        for (int i = 0; i < leaders.size(); i++) {
            if (!meant.containsKey(i)) {
                faults.add("a leader to no number");
                continue;
            }
            for (int j = i + 1; j < leaders.size(); j++) {
                if (crosses(leaders.get(i), leaders.get(j))) {
                    faults.add("leaders cross: %s and %s".formatted(leaders.get(i), leaders.get(j)));
                }
            }
            strikes(leaders.get(i), meant.get(i));
        }
        order();
        return faults;
    }

    private RandomOutline.Feature featureOf(String number) {
        return part.puts().stream()
                .filter(put -> put.number().number().equals(number))
                .findFirst()
                .orElseThrow()
                .feature();
    }

    /** The leader that ends at a circle, or at one that touches it, and so on; −1 for none. */
    private int leaderOf(Rim rim, List<Rim> seen) {
        seen.add(rim);
        for (int i = 0; i < leaders.size(); i++) {
            if (Math.abs(last(leaders.get(i)).distanceTo(rim.centre()) - rim.radius()) < 0.1) {
                return i;
            }
        }
        for (Rim other : rims) {
            if (!seen.contains(other) && other.centre().distanceTo(rim.centre()) < 2 * rim.radius() + 0.1) {
                int leader = leaderOf(other, seen);
                if (leader >= 0) {
                    return leader;
                }
            }
        }
        return -1;
    }

    private void apart() {
        for (int i = 0; i < rims.size(); i++) {
            Rim one = rims.get(i);
            Box round = new Box(
                            one.centre().x(),
                            one.centre().y(),
                            one.centre().x(),
                            one.centre().y())
                    .grown(one.radius());
            if (round.meets(drawn)) {
                faults.add(one.number() + " lies on the part");
            }
            for (Rim other : rims.subList(i + 1, rims.size())) {
                if (one.centre().distanceTo(other.centre()) < 2 * one.radius() - 0.1) {
                    faults.add("%s lies on %s".formatted(one.number(), other.number()));
                }
            }
            for (List<Point> leader : leaders) {
                for (int leg = 1; leg < leader.size(); leg++) {
                    for (int step = 0; step <= 60; step++) {
                        Point spot = leader.get(leg - 1).towards(leader.get(leg), step / 60.0);
                        if (spot.distanceTo(one.centre()) < one.radius() - 0.1) {
                            faults.add("a leader runs into " + one.number());
                            step = 61;
                        }
                    }
                }
            }
        }
    }

    private static boolean crosses(List<Point> one, List<Point> other) {
        for (int i = 1; i < one.size(); i++) {
            for (int j = 1; j < other.size(); j++) {
                if (meet(one.get(i - 1), one.get(i), other.get(j - 1), other.get(j))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean meet(Point a, Point b, Point c, Point d) {
        Box one = new Shape.Polyline(List.of(a, b), false).bounds().grown(0.5);
        Box other = new Shape.Polyline(List.of(c, d), false).bounds().grown(0.5);
        return one.meets(other) && side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0;
    }

    private static double side(Point from, Point to, Point spot) {
        return (to.x() - from.x()) * (spot.y() - from.y()) - (to.y() - from.y()) * (spot.x() - from.x());
    }

    /** Threads above and below, cross holes above. */
    private void strikes(List<Point> leader, RandomOutline.Feature meant) {
        for (RandomOutline.Feature feature : part.features()) {
            if (feature.equals(meant)
                    || !feature.kind().equals("thread") && !feature.kind().equals("hole")) {
                continue;
            }
            for (Box box : boxes(feature)) {
                boolean through = meant.kind().equals("hole") && box.top() < axis;
                for (int i = 1; i < leader.size(); i++) {
                    boolean struck = Crossing.of(
                            new Shape.Polyline(List.of(leader.get(i - 1), leader.get(i)), false), box.grown(-0.5));
                    boolean inOwnHole = through
                            && isOn(
                                    meant,
                                    new Point(leader.get(i).x(), leader.get(0).y()));
                    if (struck && !inOwnHole) {
                        faults.add("the leader of a %s strikes a %s: %s in %s".formatted(meant, feature, leader, box));
                    }
                }
            }
        }
    }

    /** Circles of one row follow one another as the places they mean do, or the end of the part a leader goes past. */
    private void order() {
        for (boolean above : new boolean[] {true, false}) {
            List<List<Point>> row = leaders.stream()
                    .filter(leader -> last(leader).y() < axis == above)
                    .sorted(Comparator.comparingDouble(leader -> last(leader).x()))
                    .toList();
            for (int i = 1; i < row.size(); i++) {
                if (place(row.get(i)) < place(row.get(i - 1)) - 8) {
                    faults.add("out of order: %s before %s".formatted(row.get(i - 1), row.get(i)));
                }
            }
        }
    }

    /** Where a leader leaves the part. */
    private double place(List<Point> leader) {
        double gate = leader.get(1).x();
        return gate < drawn.left() || gate > drawn.right()
                ? gate
                : leader.get(0).x();
    }

    private boolean isOn(RandomOutline.Feature feature, Point spot) {
        return boxes(feature).stream()
                .map(box -> box.grown(MISS))
                .anyMatch(box -> spot.x() >= box.left()
                        && spot.x() <= box.right()
                        && spot.y() >= box.top()
                        && spot.y() <= box.bottom());
    }

    /** Where a feature is drawn above the axis, and where below it. */
    private List<Box> boxes(RandomOutline.Feature feature) {
        double from = left + feature.from() * scale;
        double to = left + feature.to() * scale;
        double inner = feature.inner() * scale / 2;
        double outer = feature.outer() * scale / 2;
        Box above = new Box(from, axis - outer, to, axis - inner);
        Box below = new Box(from, axis + inner, to, axis + outer);
        return switch (feature.kind()) {
            case "pocket" -> List.of(below);
            case "hole", "bore", "floor" -> List.of(above);
            default -> List.of(above, below);
        };
    }

    private static Point last(List<Point> leader) {
        return leader.get(leader.size() - 1);
    }

    private static double millimetres(Length length) {
        return length.millimetres().doubleValue();
    }
}
