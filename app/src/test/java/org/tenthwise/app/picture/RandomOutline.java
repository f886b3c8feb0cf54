package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** A turned part as it may come, with numbers put on its features. */
final class RandomOutline {

    /**
     * A feature as it is written in the plan, in millimetres.
     *
     * @param from axial, and the lesser diameter
     * @param to axial, and the greater diameter
     */
    record Feature(String kind, double from, double to, double inner, double outer) {}

    /** A number and the feature it was put on. */
    record Put(OutlinePicture.Numbered number, Feature feature) {}

    private final Random random;
    private final List<Mark> outside = new ArrayList<>();
    private final List<Mark> inside = new ArrayList<>();
    private final List<Outline.ThreadedLength> threads = new ArrayList<>();
    private final List<Outline.Pocket> pockets = new ArrayList<>();
    private final List<Outline.CrossHole> holes = new ArrayList<>();
    private final List<Feature> features = new ArrayList<>();
    private final List<Put> puts = new ArrayList<>();

    private RandomOutline(long seed) {
        random = new Random(seed);
    }

    static RandomOutline of(long seed, int numbers) {
        RandomOutline part = new RandomOutline(seed);
        part.turn();
        for (int i = 1; i <= numbers; i++) {
            part.number(i);
        }
        return part;
    }

    Outline outline() {
        return new Outline(outside, inside, threads, pockets, holes);
    }

    OutlinePicture picture() {
        return new OutlinePicture(
                outline(), Optional.empty(), puts.stream().map(Put::number).toList(), "");
    }

    List<Feature> features() {
        return features;
    }

    List<Put> puts() {
        return puts;
    }

    private void turn() {
        double bore = random.nextInt(4) == 0 ? 0 : between(4, 30);
        double at = 0;
        int lengths = 1 + random.nextInt(6);
        double before = 0;
        for (int i = 0; i < lengths; i++) {
            double end = at + between(6, 60);
            double diameter = bore + between(12, 60);
            if (i > 0) {
                features.add(new Feature("face", at, at, Math.min(before, diameter), Math.max(before, diameter)));
            }
            outside.add(mark(at, diameter));
            outside.add(mark(end, diameter));
            length(at, end, diameter, bore);
            before = diameter;
            at = end;
        }
        if (bore > 0) {
            bore(at, bore);
        }
        features.add(new Feature("end", at, at, bore, before));
    }

    private void length(double from, double to, double diameter, double bore) {
        double span = to - from;
        switch (random.nextInt(5)) {
            case 0, 1 -> {
                double start = from + span * random.nextInt(2) * 0.1;
                threads.add(new Outline.ThreadedLength(mm(start), mm(to), mm(between(1, 4)), mm(between(0.6, 2))));
                features.add(new Feature("thread", start, to, diameter - 6, diameter));
            }
            case 2 -> {
                double width = Math.min(span * 0.4, diameter * 0.2);
                pockets.add(new Outline.Pocket(
                        mm(from + span * 0.2), mm(to - span * 0.2), mm(width), random.nextBoolean()));
                features.add(new Feature(
                        "pocket", from + span * 0.2, to - span * 0.2, diameter / 2 - width, diameter / 2 + width));
                features.add(new Feature("outside", from, to, diameter, diameter));
            }
            case 3 -> {
                double hole = Math.min(span * 0.3, between(2, 8));
                double middle = (from + to) / 2;
                holes.add(new Outline.CrossHole(mm(middle), mm(hole)));
                features.add(new Feature("hole", middle - hole / 2, middle + hole / 2, bore, diameter));
                features.add(new Feature("outside", from, to, diameter, diameter));
            }
            default -> features.add(new Feature("outside", from, to, diameter, diameter));
        }
    }

    /** Right through, or to a floor, or with a wider mouth. */
    private void bore(double length, double bore) {
        double step = length * between(0.3, 0.7);
        switch (random.nextInt(3)) {
            case 0 -> {
                inside.add(mark(0, bore));
                inside.add(mark(length, bore));
                features.add(new Feature("bore", 0, length, bore, bore));
            }
            case 1 -> {
                inside.add(mark(0, bore));
                inside.add(mark(step, bore));
                features.add(new Feature("bore", 0, step, bore, bore));
            }
            default -> {
                double least = bore / 2;
                inside.addAll(List.of(mark(0, least), mark(step, least), mark(step, bore), mark(length, bore)));
                features.add(new Feature("bore", 0, step, least, least));
                features.add(new Feature("bore", step, length, bore, bore));
                features.add(new Feature("floor", step, step, least, bore));
            }
        }
    }

    private void number(int i) {
        Feature feature = features.get(random.nextInt(features.size()));
        double share = feature.kind().equals("hole") ? 0.5 : between(0.2, 0.8);
        double at = feature.from() + share * (feature.to() - feature.from());
        double diameter =
                switch (feature.kind()) {
                    case "thread" -> feature.outer();
                    default -> feature.inner() + between(0.3, 0.7) * (feature.outer() - feature.inner());
                };
        puts.add(new Put(new OutlinePicture.Numbered(String.valueOf(i), mark(at, diameter)), feature));
    }

    private double between(double least, double most) {
        return rounded(least + random.nextDouble() * (most - least)).doubleValue();
    }

    private static BigDecimal rounded(double figure) {
        return BigDecimal.valueOf(figure).setScale(3, RoundingMode.HALF_EVEN);
    }

    private static Length mm(double figure) {
        return Length.of(rounded(figure), Unit.MILLIMETRE);
    }

    private static Mark mark(double at, double diameter) {
        return new Mark(mm(at), mm(diameter));
    }
}
