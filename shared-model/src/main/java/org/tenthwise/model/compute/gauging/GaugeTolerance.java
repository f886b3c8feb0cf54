package org.tenthwise.model.compute.gauging;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.table.Table;
import org.tenthwise.model.words.Refused;

/**
 * The tolerance a plain plug or ring is made to, and how much of the tolerance of a part it may take.
 *
 * <p>By table, in steps over one size up to and including the next. Each of GO and NOT GO: 5 % of the tolerance of the
 * part, so that both take a tenth of it.
 *
 * <p>A length, more than zero. Of a plug it lies above the size of GO and below that of NOT GO, of a ring the other way
 * round; a master has half of it on either side.
 *
 * <p>0.010 in and less, and more than 12.010 in, are not in the table.
 *
 * <p>Source: ANSI/ASME B89.1.5, chart of classes, as TM 9-243, p. 15-2, and two gauge shops print it; the tenth is
 * common practice.
 */
public final class GaugeTolerance {

    private static final List<Map<String, String>> ROWS =
            Table.beside(GaugeTolerance.class, "plug-and-ring-classes.csv").rows();
    private static final String OVER = "over";
    private static final String UP_TO = "up-to";
    private static final int MILLIONTHS = 6;
    private static final BigDecimal EACH_MEMBER = new BigDecimal("0.05");

    private GaugeTolerance() {}

    /** @throws IllegalArgumentException if {@code size} is not in the table */
    public static Length of(GaugeClass gaugeClass, Length size) {
        return ROWS.stream()
                .filter(row -> size.isAbove(inches(row.get(OVER))) && !size.isAbove(inches(row.get(UP_TO))))
                .findFirst()
                .map(row -> Length.of(new BigDecimal(row.get(gaugeClass.name())).movePointLeft(MILLIONTHS), Unit.INCH))
                .orElseThrow(() -> new Refused(
                        "model.gauge-tolerance.size",
                        ROWS.get(0).get(OVER),
                        ROWS.get(ROWS.size() - 1).get(UP_TO)));
    }

    private static Length inches(String figure) {
        return Length.of(figure, Unit.INCH);
    }

    /** What each of GO and NOT GO may take of the tolerance of a part. */
    public static Length eachMember(Length partTolerance) {
        return partTolerance.times(EACH_MEMBER);
    }

    /** The class least costly to make that takes no more than {@code most} at {@code size}; absent where none does. */
    public static Optional<GaugeClass> within(Length most, Length size) {
        return Arrays.stream(GaugeClass.values())
                .filter(each -> !of(each, size).isAbove(most))
                .reduce((closer, wider) -> wider);
    }
}
