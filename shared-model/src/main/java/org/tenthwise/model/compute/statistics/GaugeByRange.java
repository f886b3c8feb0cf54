package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tenthwise.model.compute.statistics.GaugeStudy.Interaction;
import org.tenthwise.model.words.Refused;

/**
 * A gauge study by averages and ranges.
 *
 * <p>p parts, k persons, r repeats. Repeatability = K1 · mean range of the repeats; reproducibility = √((K2 · range of
 * the persons' averages)² − repeatability²/(p r)); part = K3 · range of the parts' averages. K1 = 1/d2(r); K2 and K3 =
 * 1/√(d2² + d3²) of k and p.
 *
 * <p>Standard deviations in the unit of the readings.
 *
 * <p>One person: no reproducibility. Where the square root has less than zero under it, reproducibility counts as zero,
 * and the study says so. The method cannot see whether some persons read some parts differently.
 *
 * <p>Source: Measurement Systems Analysis reference manual, 4th ed., ch. III: the factors are rounded to four places as
 * printed there (0.8862, 0.5908; 0.7071, 0.5231; 0.3146 for ten parts), so that a worksheet filled in by hand agrees.
 * Older sheets have factors 5.15 times as large; the two do not mix.
 */
public final class GaugeByRange {

    private static final int PLACES_OF_A_FACTOR = 4;

    private GaugeByRange() {}

    /** @throws IllegalArgumentException for more than 100 parts, persons or repeats */
    public static GaugeStudy of(GaugeReadings readings) {
        int parts = readings.parts();
        int persons = readings.persons();
        int repeats = readings.repeats();
        if (Math.max(parts, Math.max(persons, repeats)) > RangeOfNormal.MOST) {
            throw new Refused("model.gauge-by-range.factors-up", RangeOfNormal.MOST);
        }
        GaugeReadings level = readings.fromFirst();
        BigDecimal ranges = BigDecimal.ZERO;
        List<BigDecimal> ofParts = new ArrayList<>(Collections.nCopies(parts, BigDecimal.ZERO));
        List<BigDecimal> ofPersons = new ArrayList<>(Collections.nCopies(persons, BigDecimal.ZERO));
        for (int part = 0; part < parts; part++) {
            for (int person = 0; person < persons; person++) {
                List<BigDecimal> cell = level.byPart().get(part).get(person);
                BigDecimal sum = cell.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
                ranges = ranges.add(range(cell));
                ofParts.set(part, ofParts.get(part).add(sum));
                ofPersons.set(person, ofPersons.get(person).add(sum));
            }
        }
        double repeatability = printed(1 / RangeOfNormal.d2(repeats)) * ranges.doubleValue() / (parts * persons);
        double part =
                printed(1 / RangeOfNormal.d2Star(parts, 1)) * range(ofParts).doubleValue() / (persons * repeats);
        if (persons == 1) {
            return new GaugeStudy(repeatability, 0, part, Interaction.NOT_SOUGHT, false);
        }
        double between =
                printed(1 / RangeOfNormal.d2Star(persons, 1)) * range(ofPersons).doubleValue() / (parts * repeats);
        double square = between * between - repeatability * repeatability / (parts * repeats);
        return new GaugeStudy(repeatability, Math.sqrt(Math.max(0, square)), part, Interaction.NOT_SOUGHT, square < 0);
    }

    private static BigDecimal range(List<BigDecimal> values) {
        return Collections.max(values).subtract(Collections.min(values));
    }

    private static double printed(double factor) {
        return new BigDecimal(factor)
                .setScale(PLACES_OF_A_FACTOR, RoundingMode.HALF_EVEN)
                .doubleValue();
    }
}
