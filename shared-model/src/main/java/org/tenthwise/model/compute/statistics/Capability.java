package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tenthwise.model.words.Refused;

/**
 * How often the spread of the parts goes into the tolerance.
 *
 * <p>Cp = (upper − lower) / 6 s; Cpu = (upper − mean) / 3 s; Cpl = (mean − lower) / 3 s; Cpk = the smaller of those
 * there are.
 *
 * <p>Plain numbers; Cpk is below zero where the mean lies outside.
 *
 * <p>With one limit there is no Cp, and Cpk is the index to that limit: the other one is not made up. From a handful of
 * parts the index alone says little; see {@link CapabilityInterval}.
 *
 * <p>Source: NIST/SEMATECH e-Handbook 6.1.6. s is that of all readings; where the process has not been shown to be
 * stable, ISO 22514-1 calls the same figures performance indices Pp and Ppk.
 */
public record Capability(OptionalDouble cp, double cpk) {

    /** @throws IllegalArgumentException without a limit, and if the lower is not below the upper */
    public static Capability of(Sample sample, Optional<BigDecimal> lower, Optional<BigDecimal> upper) {
        OptionalDouble toUpper = upper.stream()
                .mapToDouble(limit -> sample.standardDeviationsTo(limit) / 3)
                .findFirst();
        OptionalDouble toLower = lower.stream()
                .mapToDouble(limit -> -sample.standardDeviationsTo(limit) / 3)
                .findFirst();
        if (toUpper.isEmpty() && toLower.isEmpty()) {
            throw new Refused("model.capability.index-without");
        }
        if (lower.isEmpty() || upper.isEmpty()) {
            return new Capability(
                    OptionalDouble.empty(), toUpper.isPresent() ? toUpper.getAsDouble() : toLower.getAsDouble());
        }
        if (lower.get().compareTo(upper.get()) >= 0) {
            throw new Refused(
                    "model.capability.lower-upper",
                    lower.get().toPlainString(),
                    upper.get().toPlainString());
        }
        BigDecimal width = upper.get().subtract(lower.get());
        double cp = width.divide(sample.sd(), Precision.WORKING).doubleValue() / 6;
        return new Capability(OptionalDouble.of(cp), Math.min(toUpper.getAsDouble(), toLower.getAsDouble()));
    }
}
