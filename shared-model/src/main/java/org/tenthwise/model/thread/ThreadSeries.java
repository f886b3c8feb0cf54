package org.tenthwise.model.thread;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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

    private static final Table METRIC = Table.beside(ThreadSeries.class, "metric-series.csv");
    private static final Table TRAPEZOIDAL = Table.beside(ThreadSeries.class, "trapezoidal-series.csv");
    private static final Table ACME = Table.beside(ThreadSeries.class, "acme-series.csv");
    private static final Table UNIFIED_SIZES = Table.beside(ThreadSeries.class, "unified-series.csv");

    private ThreadSeries() {}

    /** Whether the standard of the form lists this diameter with this pitch. */
    public static boolean lists(ScrewThread thread) {
        return switch (thread.form()) {
            case METRIC ->
                lists(
                        METRIC,
                        Unit.MILLIMETRE,
                        thread.diameter(),
                        thread.pitch().in(Unit.MILLIMETRE),
                        List.of("coarse", "fine"));
            case TRAPEZOIDAL ->
                lists(
                        TRAPEZOIDAL,
                        Unit.MILLIMETRE,
                        thread.diameter(),
                        thread.pitch().in(Unit.MILLIMETRE),
                        List.of("pitches"));
            case ACME, STUB_ACME ->
                lists(ACME, Unit.INCH, thread.diameter(), thread.threadsToTheInch(), List.of("tpi"));
            case UNIFIED -> ofUnified(thread).isPresent();
        };
    }

    /** The series of ASME B1.1 that lists this diameter with this pitch; absent for a special thread. */
    public static Optional<String> ofUnified(ScrewThread thread) {
        BigDecimal count = thread.threadsToTheInch();
        return UNIFIED.stream()
                .filter(series -> lists(UNIFIED_SIZES, Unit.INCH, thread.diameter(), count, List.of(series)))
                .findFirst();
    }

    /** The coarse pitch that ISO 261 gives a diameter; absent if it gives none. */
    public static Optional<Length> coarsePitch(Length diameter) {
        return rows(METRIC, Unit.MILLIMETRE, diameter)
                .flatMap(row -> Table.several(row.get("coarse")).stream())
                .map(pitch -> Length.of(pitch, Unit.MILLIMETRE))
                .findFirst();
    }

    private static boolean lists(
            Table table, Unit unit, Length diameter, BigDecimal pitchOrCount, List<String> headings) {
        return rows(table, unit, diameter)
                .flatMap(row -> headings.stream().flatMap(heading -> Table.several(row.get(heading)).stream()))
                .anyMatch(listed -> new BigDecimal(listed).compareTo(pitchOrCount) == 0);
    }

    private static Stream<Map<String, String>> rows(Table table, Unit unit, Length diameter) {
        return table.rows().stream()
                .filter(row -> Length.of(row.get("diameter"), unit).equals(diameter));
    }
}
