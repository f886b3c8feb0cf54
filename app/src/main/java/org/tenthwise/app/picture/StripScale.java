package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/**
 * Sizes put on the height of a strip, greater ones on top. The window holds both limits and every size near enough to
 * them to be drawn to scale; anything further is out of the window.
 */
final class StripScale {

    /**
     * In widths of the tolerance: how far beyond a limit a size is still drawn to scale, and what is shown beyond it
     * anyway.
     */
    private static final double NEAR = 2.2;

    private static final double BEYOND = 0.32;
    private static final int[] STEPS = {1, 2, 5};
    /** Of minutes and seconds, below sixty; more than that are a degree or a minute of them. */
    private static final int[] STEPS_OF_SIXTY = {1, 2, 5, 10, 30};

    private static final double LEAST_TICK = 8;

    private final Unit unit;
    private final Length width;
    private final double top;
    private final double bottom;
    private final double most;
    private final double least;
    private final Length middle;

    StripScale(SizePicture picture, double top, double bottom) {
        this.unit = picture.unit();
        this.top = top;
        this.bottom = bottom;
        this.width = toleranceWidth(picture);
        List<Length> limits = sizes(picture.limits());
        Length low = Length.least(limits).minus(width.times(BigDecimal.valueOf(BEYOND)));
        Length high = Length.greatest(limits).plus(width.times(BigDecimal.valueOf(BEYOND)));
        Length reach = width.times(BigDecimal.valueOf(NEAR));
        Length margin = width.times(new BigDecimal("0.12"));
        for (Length size :
                Stream.concat(wanted(picture).stream(), picture.mate().stream()).toList()) {
            if (!size.isBelow(Length.least(limits).minus(reach))
                    && !size.isAbove(Length.greatest(limits).plus(reach))) {
                low = Length.least(List.of(low, size.minus(margin)));
                high = Length.greatest(List.of(high, size.plus(margin)));
            }
        }
        this.least = low.in(unit).doubleValue();
        this.most = high.in(unit).doubleValue();
        this.middle = Length.mean(limits);
    }

    private static List<Length> sizes(List<SizePicture.Sized> sized) {
        return sized.stream().map(SizePicture.Sized::size).toList();
    }

    private static List<Length> wanted(SizePicture picture) {
        return Stream.of(
                        picture.columns().stream()
                                .filter(column -> column.kind() == SizePicture.Kind.TAKEN)
                                .flatMap(column -> column.size().stream()),
                        picture.judged().stream(),
                        picture.cut().stream().map(SizePicture.Cut::aim))
                .flatMap(sizes -> sizes)
                .map(SizePicture.Sized::size)
                .toList();
    }

    /**
     * Upper less lower limit. With one limit, how far the sizes lie from it; with no size either, a hundredth of it.
     * With one limit never less than its figures can tell apart.
     */
    private static Length toleranceWidth(SizePicture picture) {
        List<Length> limits = sizes(picture.limits());
        Length between = Length.greatest(limits).minus(Length.least(limits));
        if (between.signum() > 0) {
            return between;
        }
        Length found = wanted(picture).stream()
                .map(size -> size.minus(limits.get(0)).abs())
                .filter(length -> length.signum() > 0)
                .min(Length::compareTo)
                .orElse(
                        limits.get(0).signum() == 0
                                ? leastWidth(picture)
                                : limits.get(0).abs().times(new BigDecimal("0.01")));
        return Length.greatest(List.of(found, leastWidth(picture)));
    }

    /** Ten steps of the last place the limit is written with: lines finer than a tenth of that place say nothing. */
    private static Length leastWidth(SizePicture picture) {
        String limit = picture.limits().get(0).figures().replaceAll("[^0-9.]", "");
        int places = limit.indexOf('.') < 0 ? 0 : limit.length() - limit.indexOf('.') - 1;
        return Length.of(BigDecimal.TEN.scaleByPowerOfTen(-places), picture.unit());
    }

    double y(Length size) {
        return bottom - (size.in(unit).doubleValue() - least) / (most - least) * (bottom - top);
    }

    boolean isAbove(Length size) {
        return y(size) < top;
    }

    boolean isBelow(Length size) {
        return y(size) > bottom;
    }

    /** Into the window, where it is out of it. */
    double clamped(Length size) {
        return Math.min(Math.max(y(size), top), bottom);
    }

    /**
     * How far {@code size} lies from the middle of the limits, in tolerance widths, and never further than 1.4 of them.
     */
    double share(Length size) {
        double off = size.minus(middle).in(unit).doubleValue() / width.in(unit).doubleValue();
        return Math.max(-1.4, Math.min(1.4, off));
    }

    /**
     * The step of the ticks, as fine as can be told apart: 1, 2 or 5 in some decimal place, or whole minutes and
     * seconds as a protractor has them.
     */
    BigDecimal step() {
        double fine = LEAST_TICK * (most - least) / (bottom - top);
        return fine > 1 && unit.hasMarksInside() ? ofSixty(fine) : decimal(fine);
    }

    private static BigDecimal ofSixty(double fine) {
        for (int whole = 1; ; whole *= 60) {
            for (int digit : STEPS_OF_SIXTY) {
                if (digit * whole >= fine) {
                    return BigDecimal.valueOf(digit * whole);
                }
            }
        }
    }

    private static BigDecimal decimal(double fine) {
        int exponent = (int) Math.floor(Math.log10(fine));
        for (int place = exponent; ; place++) {
            for (int digit : STEPS) {
                BigDecimal step = BigDecimal.valueOf(digit).scaleByPowerOfTen(place);
                if (step.doubleValue() >= fine) {
                    return step;
                }
            }
        }
    }

    /** Heights of the ticks and whether each is a long one, every fifth. */
    List<Tick> ticks() {
        double step = step().doubleValue();
        List<Tick> ticks = new ArrayList<>();
        for (long n = (long) Math.ceil(least / step); n * step <= most; n++) {
            ticks.add(new Tick(bottom - (n * step - least) / (most - least) * (bottom - top), n % 5 == 0));
        }
        return ticks;
    }

    record Tick(double y, boolean isLong) {}
}
