package org.tenthwise.model.compute.uncertainty;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tenthwise.model.words.Refused;

/**
 * How often a decision will be wrong over many parts of one process.
 *
 * <p>Consumer's risk = ∫ outside the limits of f(y) · P(accept | y) dy; producer's risk = ∫ inside the limits of f(y) ·
 * (1 − P(accept | y)) dy. f is the normal distribution of the true sizes, and a size is accepted if the measured one
 * lies inside the limits by the guard band or more: P(accept | y) = Φ((upper − band − y)/u) − Φ((lower + band − y)/u).
 *
 * <p>No unit; each from 0 to 1, and to nine places. The two share the four ways a part can go: good or bad, accepted or
 * not.
 *
 * <p>A wider guard band lowers the consumer's risk and raises the producer's. A band of half the tolerance accepts
 * nothing: no consumer's risk, and every good part rejected.
 *
 * <p>Source: JCGM 106:2012, 9.3 and 9.5. Worked by five-point Gauss-Legendre steps (Abramowitz and Stegun, table 25.4)
 * between the places where the integrand bends: limits, edges of the acceptance zone and eight u on either side of
 * them, and ten standard deviations of the process.
 *
 * @param consumer a part outside its limits is accepted
 * @param producer a part inside its limits is not accepted
 */
public record GlobalRisk(double consumer, double producer) {

    private static final double[] NODES = {
        0, 0.5384693101056831, -0.5384693101056831, 0.9061798459386640, -0.9061798459386640
    };
    private static final double[] WEIGHTS = {
        0.5688888888888889, 0.4786286704993665, 0.4786286704993665, 0.2369268850561891, 0.2369268850561891
    };
    private static final int STEPS = 64;
    private static final double PROCESS_ENDS = 10;
    private static final double EDGE_ENDS = 8;

    /**
     * The limits and the guard band within them.
     *
     * @param upper above {@code lower}
     * @param guardBand zero or more, and no more than half of the tolerance
     */
    public record Zone(double lower, double upper, double guardBand) {

        public Zone {
            if (!(upper > lower)) {
                throw new Refused("model.global-risk.upper-limit");
            }
            if (!(guardBand >= 0)) {
                throw new Refused("model.global-risk.guard-band");
            }
        }

        private double acceptFrom() {
            return lower + guardBand;
        }

        private double acceptTo() {
            return Math.max(upper - guardBand, acceptFrom());
        }
    }

    /**
     * @param mean of the true sizes
     * @param deviation standard deviation of the true sizes, more than zero
     * @param standardUncertainty of one measurement, more than zero
     */
    public static GlobalRisk of(Zone zone, double mean, double deviation, double standardUncertainty) {
        if (!(deviation > 0) || !(standardUncertainty > 0)) {
            throw new Refused("model.global-risk.risk-needs");
        }
        NormalDistribution process = NormalDistribution.of(mean, deviation);
        NormalDistribution measurement = NormalDistribution.of(0, standardUncertainty);
        DoubleUnaryOperator accepted = size -> zone.acceptFrom() == zone.acceptTo()
                ? 0
                : measurement.probability(zone.acceptFrom() - size, zone.acceptTo() - size);
        double[] bends = bends(zone, mean, deviation, standardUncertainty);
        double consumer = 0;
        double producer = 0;
        for (int i = 1; i < bends.length; i++) {
            double middle = (bends[i - 1] + bends[i]) / 2;
            if (middle < zone.lower() || middle > zone.upper()) {
                consumer +=
                        integral(size -> process.density(size) * accepted.applyAsDouble(size), bends[i - 1], bends[i]);
            } else {
                producer += integral(
                        size -> process.density(size) * (1 - accepted.applyAsDouble(size)), bends[i - 1], bends[i]);
            }
        }
        return new GlobalRisk(consumer, producer);
    }

    private static double[] bends(Zone zone, double mean, double deviation, double standardUncertainty) {
        double from = mean - PROCESS_ENDS * deviation;
        double to = mean + PROCESS_ENDS * deviation;
        double edge = EDGE_ENDS * standardUncertainty;
        return DoubleStream.of(
                        from,
                        mean,
                        to,
                        zone.lower(),
                        zone.upper(),
                        zone.acceptFrom() - edge,
                        zone.acceptFrom(),
                        zone.acceptFrom() + edge,
                        zone.acceptTo() - edge,
                        zone.acceptTo(),
                        zone.acceptTo() + edge)
                .map(place -> Math.min(to, Math.max(from, place)))
                .sorted()
                .distinct()
                .toArray();
    }

    private static double integral(DoubleUnaryOperator function, double from, double to) {
        double half = (to - from) / STEPS / 2;
        double sum = 0;
        for (int step = 0; step < STEPS; step++) {
            double middle = from + (2 * step + 1) * half;
            for (int node = 0; node < NODES.length; node++) {
                sum += WEIGHTS[node] * function.applyAsDouble(middle + half * NODES[node]);
            }
        }
        return sum * half;
    }
}
