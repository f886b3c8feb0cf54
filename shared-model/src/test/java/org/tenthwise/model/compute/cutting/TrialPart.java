package org.tenthwise.model.compute.cutting;

import java.util.Arrays;
import java.util.Random;
import org.tenthwise.model.plan.Feature;

/**
 * A part on the machine, made up: limits, a wall that is not what it should be, and metal left on it. In whole tenths
 * of a micrometre.
 *
 * @param walls size at every place that is read
 * @param least least cut, on the radius or one wall; zero where there is none
 */
record TrialPart(
        Feature feature, long lower, long upper, long guard, long aim, long least, long step, long[] walls, Form form) {

    /** What is wrong with the wall, mostly. */
    enum Form {
        TAPER,
        BELL,
        BARREL,
        OVAL,
        LOBES,
        PUSHED_OFF
    }

    private static final long[] STEPS = {1, 5, 10, 20, 50, 100};
    private static final long NOMINAL = 300_000;

    /**
     * Half of them can be brought in by one even cut, or nearly: the wall is up to one and a half times as uneven as
     * the limits are apart.
     */
    static TrialPart of(Random random) {
        Feature feature = Feature.PLAIN.get(random.nextInt(Feature.PLAIN.size()));
        long width = 12L * (5 + random.nextInt(150));
        long guard = random.nextBoolean() ? 0 : random.nextInt((int) (width / 4));
        Form form = Form.values()[random.nextInt(Form.values().length)];
        long[] shape = shape(random, form, width);
        long metalSide = feature == Feature.DIAMETER ? NOMINAL + width : NOMINAL;
        long sense = feature == Feature.DIAMETER ? 1 : -1;
        long stock = random.nextInt(5) == 0 ? random.nextInt((int) (2 * width)) - 2 * width : random.nextInt(6000);
        long[] walls = Arrays.stream(shape)
                .map(more -> metalSide + sense * (stock + more))
                .toArray();
        long aim =
                switch (random.nextInt(3)) {
                    case 0 -> NOMINAL + width / 2;
                    case 1 -> metalSide - sense * width / 3;
                    default -> NOMINAL + guard + random.nextInt((int) (width - 2 * guard));
                };
        return new TrialPart(
                feature,
                NOMINAL,
                NOMINAL + width,
                guard,
                aim,
                random.nextBoolean() ? 0 : 20 + random.nextInt(600),
                STEPS[random.nextInt(STEPS.length)],
                walls,
                form);
    }

    /** Metal left at each place beyond the place with least, by depth and by angle. */
    private static long[] shape(Random random, Form form, long width) {
        int depths = 1 + random.nextInt(5);
        int ways = 1 + random.nextInt(6);
        double much = 1.5 * width * random.nextDouble();
        double turned = Math.PI * random.nextDouble();
        double[] shape = new double[depths * ways];
        for (int depth = 0; depth < depths; depth++) {
            for (int way = 0; way < ways; way++) {
                double along = depths == 1 ? 0 : depth / (depths - 1.0);
                double around = turned + Math.PI * way / ways;
                double mainly =
                        switch (form) {
                            case TAPER -> along;
                            case BELL -> 1 - along * along;
                            case BARREL -> 4 * along * (1 - along);
                            case OVAL -> (1 + Math.cos(2 * around)) / 2;
                            case LOBES -> (1 + Math.cos(3 * around)) / 2;
                            case PUSHED_OFF -> (3 * along * along - along * along * along) / 2;
                        };
                shape[depth * ways + way] = much * (mainly + random.nextDouble() / 10);
            }
        }
        double least = Arrays.stream(shape).min().orElseThrow();
        return Arrays.stream(shape).mapToLong(at -> Math.round(at - least)).toArray();
    }

    TrialPart cut(long off) {
        long sense = feature == Feature.DIAMETER ? -1 : 1;
        return new TrialPart(
                feature,
                lower,
                upper,
                guard,
                aim,
                least,
                step,
                Arrays.stream(walls).map(wall -> wall + sense * off).toArray(),
                form);
    }

    boolean isAnywherePastSize(long band) {
        return feature == Feature.DIAMETER ? smallest() < lower + band : greatest() > upper - band;
    }

    boolean isEverywhereInside() {
        return smallest() >= lower + guard && greatest() <= upper - guard;
    }

    boolean isTooLight(long off) {
        return off == 0 || (feature == Feature.DEPTH ? off : off / 2.0) < least;
    }

    /**
     * The cut to take, found by trying one step after the other: of those that bring every place inside, the last one
     * before the middle of the wall is past the aim, or the first one there is; less than zero where there is none.
     */
    long byTrying() {
        long sense = feature == Feature.DIAMETER ? -1 : 1;
        long found = -1;
        long smallest = smallest();
        long greatest = greatest();
        for (long off = 0; sense < 0 ? smallest - off >= lower + guard : greatest + off <= upper - guard; off += step) {
            boolean inside = sense < 0 ? greatest - off <= upper - guard : smallest + off >= lower + guard;
            boolean beyondTheAim = sense * (smallest + greatest + 2 * sense * off - 2 * aim) > 0;
            if (inside && (found < 0 || !beyondTheAim)) {
                found = off;
            }
        }
        return found;
    }

    long smallest() {
        return Arrays.stream(walls).min().orElseThrow();
    }

    long greatest() {
        return Arrays.stream(walls).max().orElseThrow();
    }
}
