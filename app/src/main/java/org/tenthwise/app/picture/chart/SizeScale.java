package org.tenthwise.app.picture.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Sizes on the height of a picture, greater ones on top. The window holds all limits and what lies near them; what lies
 * further out is drawn at the edge.
 */
final class SizeScale {

    /** In widths of the tolerance: how far outside is still drawn to scale. */
    private static final double NEAR = 1.5;

    private static final double MARGIN = 0.14;
    private static final int[] DIGITS = {1, 2, 5};

    private final double top;
    private final double bottom;
    private final double least;
    private final double most;

    /** A line of the scale, and its figure. */
    record Tick(double y, String text) {}

    private SizeScale(double top, double bottom, double least, double most) {
        this.top = top;
        this.bottom = bottom;
        this.least = least;
        this.most = most;
    }

    /** @param course one spot or more with a size, or a limit */
    static SizeScale of(CoursePicture course, double top, double bottom) {
        double[] limits = course.allowed().stream()
                .flatMap(allowed -> Stream.of(allowed.lower(), allowed.upper()))
                .flatMap(limit -> limit.stream())
                .mapToDouble(ChartFigure::at)
                .toArray();
        double[] sizes = course.spots().stream()
                .flatMap(spot -> Stream.of(spot.first(), spot.last()))
                .flatMap(size -> size.stream())
                .mapToDouble(ChartFigure::at)
                .toArray();
        sizes = DoubleStream.concat(DoubleStream.of(sizes), course.reaches()).toArray();
        double[] base = limits.length > 0 ? limits : sizes;
        double low = DoubleStream.of(base).min().orElse(0);
        double high = DoubleStream.of(base).max().orElse(0);
        double width = course.isOpen() ? spread(limits, sizes) : high - low;
        double near = course.isOpen() ? Double.POSITIVE_INFINITY : NEAR * width;
        double from = low - near;
        double to = high + near;
        double[] shown = DoubleStream.concat(DoubleStream.of(sizes), course.processFigures())
                .filter(size -> size >= from && size <= to)
                .toArray();
        low = Math.min(low, DoubleStream.of(shown).min().orElse(low));
        high = Math.max(high, DoubleStream.of(shown).max().orElse(high));
        low = Math.min(low, course.aim().map(ChartFigure::at).orElse(low));
        high = Math.max(high, course.aim().map(ChartFigure::at).orElse(high));
        double span = high - low > 0 ? high - low : Math.max(width, Math.max(Math.abs(high), 1) * 1e-3);
        return new SizeScale(top, bottom, low - MARGIN * span, high + MARGIN * span);
    }

    /** How far the sizes lie apart and from the one limit there is. */
    private static double spread(double[] limits, double[] sizes) {
        DoubleStream all = DoubleStream.concat(DoubleStream.of(limits), DoubleStream.of(sizes));
        var summary = all.summaryStatistics();
        return summary.getCount() == 0 ? 0 : summary.getMax() - summary.getMin();
    }

    /** Into the window, where it is out of it. */
    double y(double size) {
        double at = bottom - (size - least) / (most - least) * (bottom - top);
        return Math.min(Math.max(at, top), bottom);
    }

    double y(BigDecimal size) {
        return y(size.doubleValue());
    }

    /** 1 above the window, −1 below it, 0 in it. */
    int outside(double size) {
        return size > most ? 1 : size < least ? -1 : 0;
    }

    /**
     * Round figures, at least {@code apart} pixels from one to the next.
     *
     * @param places decimals the limits are written with; no figure has fewer
     */
    List<Tick> ticks(double apart, int places) {
        BigDecimal step = step(apart * (most - least) / (bottom - top));
        int written = Math.max(places, Math.max(0, step.stripTrailingZeros().scale()));
        List<Tick> ticks = new ArrayList<>();
        BigDecimal at =
                BigDecimal.valueOf(least).divide(step, 0, RoundingMode.CEILING).multiply(step);
        for (; at.doubleValue() <= most; at = at.add(step)) {
            String text = at.setScale(written, RoundingMode.HALF_EVEN).toPlainString();
            ticks.add(new Tick(y(at), text.replace('-', '\u2212')));
        }
        return ticks;
    }

    private static BigDecimal step(double fine) {
        for (int place = (int) Math.floor(Math.log10(fine)); ; place++) {
            for (int digit : DIGITS) {
                BigDecimal step = BigDecimal.valueOf(digit).scaleByPowerOfTen(place);
                if (step.doubleValue() >= fine) {
                    return step;
                }
            }
        }
    }
}
