package org.tenthwise.model.compute.uncertainty;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.words.Refused;

/**
 * What a figure is against its limits as it stands, and rounded to the places of the limits first.
 *
 * <p>Absolute: lower ≤ value ≤ upper. Rounding: the same of the value rounded to {@code place}, half to the even digit.
 *
 * <p>Exact decimals, never binary fractions; in the unit of what goes in.
 *
 * <p>A value with no more places than the limits is the same by both, and on a limit it conforms by both.
 *
 * <p>Source: ASTM E29, which has both and leaves the choice to the order; a drawing's limits are absolute (ASME Y14.5),
 * and so absolute is what counts where nothing is agreed.
 *
 * @param rounded the value as the rounding method sees it
 * @param absolute whether the value conforms as it stands
 * @param byRounding whether the rounded value conforms
 */
public record RoundingMethod(BigDecimal rounded, boolean absolute, boolean byRounding) {

    /**
     * @param place the unit of the last place rounded to, a power of ten such as 0.001 or 100; absent for the last
     *     place of the limits as written, the finer one where they differ
     * @throws IllegalArgumentException if there is no limit, if they are the wrong way round, or if the place is no
     *     power of ten
     */
    public static RoundingMethod of(
            BigDecimal value, Optional<BigDecimal> lower, Optional<BigDecimal> upper, Optional<BigDecimal> place) {
        if (lower.isEmpty() && upper.isEmpty()) {
            throw new Refused("model.rounding-method.lower-upper");
        }
        if (lower.isPresent() && upper.isPresent() && lower.get().compareTo(upper.get()) > 0) {
            throw new Refused(
                    "model.rounding-method.lower-upper-lower",
                    lower.get().toPlainString(),
                    upper.get().toPlainString());
        }
        int scale = place.map(RoundingMethod::scaleOf).orElseGet(() -> Stream.of(lower, upper)
                .flatMap(Optional::stream)
                .mapToInt(BigDecimal::scale)
                .max()
                .orElseThrow());
        BigDecimal rounded = value.setScale(scale, RoundingMode.HALF_EVEN);
        return new RoundingMethod(rounded, within(value, lower, upper), within(rounded, lower, upper));
    }

    private static int scaleOf(BigDecimal place) {
        BigDecimal bare = place.stripTrailingZeros();
        if (bare.unscaledValue().intValue() != 1 || bare.precision() != 1) {
            throw new Refused("model.rounding-method.place-power", place.toPlainString());
        }
        return bare.scale();
    }

    private static boolean within(BigDecimal value, Optional<BigDecimal> lower, Optional<BigDecimal> upper) {
        return lower.filter(limit -> value.compareTo(limit) < 0).isEmpty()
                && upper.filter(limit -> value.compareTo(limit) > 0).isEmpty();
    }
}
