package org.tenthwise.model.thread;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.table.Table;

/**
 * The diameters and pitches that go together in the standards: ISO 261, ISO 2904, ASME B1.1, B1.5 and B1.8. Whatever is
 * not listed is a special thread, with its limits on its drawing.
 */
public final class ThreadSeries {

    /** The series of ASME B1.1, the one that gives a thread its name first. */
    public static final List<String> UNIFIED = List.of("UNC", "UNF", "UNEF", "UN", "UNS");

    private static final Map<Length, List<Map<String, String>>> METRIC = bySize("metric-series.csv", Unit.MILLIMETRE);
    private static final Map<Length, List<Map<String, String>>> TRAPEZOIDAL =
            bySize("trapezoidal-series.csv", Unit.MILLIMETRE);
    private static final Map<Length, List<Map<String, String>>> ACME = bySize("acme-series.csv", Unit.INCH);
    private static final Map<Length, List<Map<String, String>>> UNIFIED_SIZES = bySize("unified-series.csv", Unit.INCH);

    private ThreadSeries() {}

    /** Whether the standard of the form lists this diameter with this pitch. */
    public static boolean lists(ScrewThread thread) {
        return switch (thread.form()) {
            case METRIC ->
                lists(METRIC, thread.diameter(), thread.pitch().in(Unit.MILLIMETRE), List.of("coarse", "fine"));
            case TRAPEZOIDAL ->
                lists(TRAPEZOIDAL, thread.diameter(), thread.pitch().in(Unit.MILLIMETRE), List.of("pitches"));
            case ACME, STUB_ACME -> lists(ACME, thread.diameter(), thread.threadsToTheInch(), List.of("tpi"));
            case UNIFIED -> ofUnified(thread).isPresent();
        };
    }

    /** The series of ASME B1.1 that lists this diameter with this pitch; absent for a special thread. */
    public static Optional<String> ofUnified(ScrewThread thread) {
        BigDecimal count = thread.threadsToTheInch();
        return UNIFIED.stream()
                .filter(series -> lists(UNIFIED_SIZES, thread.diameter(), count, List.of(series)))
                .findFirst();
    }

    /** The coarse pitch that ISO 261 gives a diameter; absent if it gives none. */
    public static Optional<Length> coarsePitch(Length diameter) {
        return METRIC.getOrDefault(diameter, List.of()).stream()
                .flatMap(row -> Table.several(row.get("coarse")).stream())
                .map(pitch -> Length.of(pitch, Unit.MILLIMETRE))
                .findFirst();
    }

    private static boolean lists(
            Map<Length, List<Map<String, String>>> rows,
            Length diameter,
            BigDecimal pitchOrCount,
            List<String> headings) {
        for (Map<String, String> row : rows.getOrDefault(diameter, List.of())) {
            for (String heading : headings) {
                for (String listed : Table.several(row.get(heading))) {
                    if (new BigDecimal(listed).compareTo(pitchOrCount) == 0) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static Map<Length, List<Map<String, String>>> bySize(String file, Unit unit) {
        return Table.beside(ThreadSeries.class, file).rows().stream()
                .collect(Collectors.groupingBy(row -> Length.of(row.get("diameter"), unit)));
    }
}
