package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** When a thread over wires is inside. */
final class ThreadOracle {

    private static final MathContext EXACT = MathContext.DECIMAL64;
    private static final BigDecimal PITCH = new BigDecimal("1.5");
    private static final BigDecimal ROOT_OF_THREE = new BigDecimal("1.7320508075688772");
    /** Basic minor diameter of M10 x 1.5: 10 less 1.082532 times the pitch (ISO 68-1). */
    static final BigDecimal BASIC_MINOR = new BigDecimal("8.376202");

    private ThreadOracle() {}

    /**
     * Pitch diameter from the measurement M over wires w: M − 3w + P·√3/2, less half the wire times the square of the
     * tangent of the lead angle times cos 30° cot 30° (Machinery's Handbook, measuring screw threads by wires, from
     * memory); good to a tenth of a micrometre here. Room at the root: half of M − 2w − root.
     */
    static Oracle.Says passed(Facts.Thread demanded, Map<String, Counting.Read> read, Optional<BigDecimal> root) {
        if (read.size() < 2) {
            return Oracle.Says.NOT_PASSED;
        }
        if (root.isEmpty()) {
            return Oracle.Says.NOT_PASSED;
        }
        Oracle.Says says = Oracle.Says.PASSED;
        for (Counting.Read one : read.values()) {
            if (!isOffTheRoot(one, root.get())) {
                says = Oracle.Says.NOT_PASSED;
            }
        }
        return says == Oracle.Says.NOT_PASSED
                ? says
                : Oracle.inside(
                        pitchDiameters(read),
                        Optional.of(demanded.lower().add(demanded.guard())),
                        Optional.of(demanded.upper().subtract(demanded.guard())),
                        true);
    }

    static boolean isOffTheRoot(Counting.Read read, BigDecimal root) {
        BigDecimal wire = Counting.millimetres(read.setting().certified().orElseThrow());
        return read.figure().subtract(wire.add(wire)).compareTo(root) > 0;
    }

    /** Those of the readings that count. */
    static List<BigDecimal> pitchDiameters(Map<String, Counting.Read> readings) {
        return readings.values().stream()
                .map(one -> {
                    BigDecimal wire =
                            Counting.millimetres(one.setting().certified().orElseThrow());
                    BigDecimal pitchDiameter = one.figure()
                            .subtract(wire.multiply(new BigDecimal("3")))
                            .add(PITCH.multiply(ROOT_OF_THREE).divide(new BigDecimal("2"), EXACT));
                    double tangent = PITCH.doubleValue() / (Math.PI * 9.026);
                    return pitchDiameter.subtract(BigDecimal.valueOf(wire.doubleValue() / 2 * tangent * tangent * 1.5));
                })
                .toList();
    }
}
