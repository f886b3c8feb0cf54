package org.tenthwise.model.compute.temperature;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.TemperatureRange;
import org.tenthwise.model.words.Refused;

/**
 * The largest correction to 20 °C that a size can need in a shop, and whether a tolerance feels it.
 *
 * <p>Worst = max |L20 − m| over the corners of the two ranges, part and gauge each at its least and at its greatest:
 * the correction only rises or only falls with either temperature, so it is greatest at a corner. It matters where it
 * is above a twentieth of the tolerance.
 *
 * <p>A length, zero or more; the share is worst / tolerance.
 *
 * <p>A range of one temperature gives the correction at that temperature. Exactly a twentieth does not matter. With no
 * tolerance at all (zero) any correction matters.
 *
 * <p>Source: {@link AtTwenty}. The twentieth is common practice: half of the tenth that a measurement may take of the
 * tolerance.
 *
 * @param worst zero or more
 */
public record WorstCorrection(Length worst) {

    private static final BigDecimal TWENTY = new BigDecimal("20");

    /** @param size the size read, or the greatest that may be read */
    public static WorstCorrection of(
            Length size, Expansion part, TemperatureRange partAt, Expansion gauge, TemperatureRange gaugeAt) {
        List<Length> corners = Stream.of(partAt.least(), partAt.greatest())
                .flatMap(p -> Stream.of(gaugeAt.least(), gaugeAt.greatest()).map(g -> corner(size, part, p, gauge, g)))
                .toList();
        return new WorstCorrection(Length.greatest(corners));
    }

    private static Length corner(Length size, Expansion part, Celsius partAt, Expansion gauge, Celsius gaugeAt) {
        return new AtTwenty(part, partAt, gauge, gaugeAt).correction(size).abs();
    }

    /** @param tolerance upper limit less lower limit */
    public boolean mattersIn(Length tolerance) {
        return worst.times(TWENTY).isAbove(tolerance);
    }

    /** @param tolerance more than zero */
    public BigDecimal shareOf(Length tolerance) {
        if (tolerance.signum() <= 0) {
            throw new Refused("model.worst-correction.share-tolerance", tolerance);
        }
        return worst.millimetres().divide(tolerance.millimetres(), MathContext.DECIMAL64);
    }
}
