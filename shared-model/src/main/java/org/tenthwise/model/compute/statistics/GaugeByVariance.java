package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.FDistribution;
import org.tenthwise.model.compute.statistics.GaugeStudy.Interaction;

/**
 * A gauge study by analysis of variance.
 *
 * <p>p parts, k persons, r repeats; mean squares MS of parts, persons, interaction and error. Interaction kept:
 * repeatability² = MS error; interaction² = (MS interaction − MS error)/r; persons² = (MS persons − MS interaction)/(p
 * r); part² = (MS parts − MS interaction)/(k r); reproducibility² = persons² + interaction². Interaction not
 * significant (probability of its F above 0.25): its squares and degrees of freedom join the error, which then stands
 * in its place, and interaction² = 0.
 *
 * <p>Standard deviations in the unit of the readings.
 *
 * <p>One person: no reproducibility, part² = (MS parts − MS error)/r. A variance below zero counts as zero, and the
 * study says so. Repeats all alike leave an error of zero; any interaction is then kept.
 *
 * <p>Source: Measurement Systems Analysis reference manual, 4th ed., app. A. Pooling above 0.25 is common practice;
 * some pool above 0.05. Sums of squares are exact.
 */
public final class GaugeByVariance {

    private static final double POOL_ABOVE = 0.25;

    private GaugeByVariance() {}

    public static GaugeStudy of(GaugeReadings readings) {
        int parts = readings.parts();
        int persons = readings.persons();
        int repeats = readings.repeats();
        Squares squares = Squares.of(readings.fromFirst());
        double errorFreedom = (double) parts * persons * (repeats - 1);
        double ofParts = squares.parts / (parts - 1);
        if (persons == 1) {
            double ofError = (squares.error + squares.interaction) / errorFreedom;
            return study(ofError, 0, 0, (ofParts - ofError) / repeats, Interaction.NOT_SOUGHT);
        }
        double interactionFreedom = (parts - 1.0) * (persons - 1);
        double ofPersons = squares.persons / (persons - 1);
        double ofInteraction = squares.interaction / interactionFreedom;
        double ofError = squares.error / errorFreedom;
        if (pooled(ofInteraction, interactionFreedom, ofError, errorFreedom)) {
            double pooled = (squares.error + squares.interaction) / (errorFreedom + interactionFreedom);
            return study(
                    pooled,
                    0,
                    (ofPersons - pooled) / parts / repeats,
                    (ofParts - pooled) / persons / repeats,
                    Interaction.POOLED);
        }
        return study(
                ofError,
                (ofInteraction - ofError) / repeats,
                (ofPersons - ofInteraction) / parts / repeats,
                (ofParts - ofInteraction) / persons / repeats,
                Interaction.KEPT);
    }

    private static boolean pooled(
            double ofInteraction, double interactionFreedom, double ofError, double errorFreedom) {
        if (ofError == 0) {
            return ofInteraction == 0;
        }
        return FDistribution.of(interactionFreedom, errorFreedom).survivalProbability(ofInteraction / ofError)
                > POOL_ABOVE;
    }

    private static GaugeStudy study(double error, double interaction, double persons, double parts, Interaction kept) {
        return new GaugeStudy(
                Math.sqrt(error),
                Math.sqrt(Math.max(0, interaction) + Math.max(0, persons)),
                Math.sqrt(Math.max(0, parts)),
                kept,
                interaction < 0 || persons < 0 || parts < 0);
    }

    /** Sums of squares: exact until the last division, so that what is zero is zero. */
    private record Squares(double parts, double persons, double interaction, double error) {

        static Squares of(GaugeReadings readings) {
            List<List<List<BigDecimal>>> byPart = readings.byPart();
            List<BigDecimal> ofCells =
                    byPart.stream().flatMap(List::stream).map(Squares::sum).toList();
            List<BigDecimal> ofParts = byPart.stream()
                    .map(part -> sum(part.stream().flatMap(List::stream).toList()))
                    .toList();
            List<BigDecimal> ofPersons = IntStream.range(0, readings.persons())
                    .mapToObj(person -> sum(byPart.stream()
                            .flatMap(part -> part.get(person).stream())
                            .toList()))
                    .toList();
            BigDecimal cells = times(readings.parts() * readings.persons(), squares(ofCells));
            BigDecimal parts = times(readings.parts(), squares(ofParts));
            BigDecimal persons = times(readings.persons(), squares(ofPersons));
            BigDecimal all = squares(List.of(sum(ofParts)));
            int count = readings.parts() * readings.persons() * readings.repeats();
            BigDecimal single = times(
                    count,
                    squares(byPart.stream()
                            .flatMap(List::stream)
                            .flatMap(List::stream)
                            .toList()));
            return new Squares(
                    parts.subtract(all).doubleValue() / count,
                    persons.subtract(all).doubleValue() / count,
                    cells.subtract(parts).subtract(persons).add(all).doubleValue() / count,
                    single.subtract(cells).doubleValue() / count);
        }

        private static BigDecimal sum(List<BigDecimal> values) {
            return values.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        }

        private static BigDecimal squares(List<BigDecimal> values) {
            return sum(values.stream().map(value -> value.multiply(value)).toList());
        }

        private static BigDecimal times(int count, BigDecimal value) {
            return BigDecimal.valueOf(count).multiply(value);
        }
    }
}
