package org.tenthwise.model.compute.thread.limits;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.table.Table;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadClass;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.thread.ThreadSeries;
import org.tenthwise.model.thread.ThreadSide;

/** Every size the standards list. */
final class ListedThreads {

    private ListedThreads() {}

    static List<ScrewThread> all() {
        return Stream.of(ThreadForm.values()).flatMap(form -> of(form).stream()).toList();
    }

    static List<ScrewThread> of(ThreadForm form) {
        return switch (form) {
            case METRIC -> sizes(form, "metric-series.csv", List.of("coarse", "fine"));
            case TRAPEZOIDAL -> sizes(form, "trapezoidal-series.csv", List.of("pitches"));
            case UNIFIED -> sizes(form, "unified-series.csv", ThreadSeries.UNIFIED);
            case ACME, STUB_ACME -> sizes(form, "acme-series.csv", List.of("tpi"));
        };
    }

    static ThreadDesignation as(ScrewThread thread, String name, ThreadSide side) {
        return new ThreadDesignation(
                thread, ThreadClass.of(thread.form(), name), Optional.of(side), Optional.empty(), false);
    }

    private static List<ScrewThread> sizes(ThreadForm form, String file, List<String> headings) {
        boolean metric = form.isMetric();
        List<ScrewThread> threads = new ArrayList<>();
        for (Map<String, String> row : Table.beside(ThreadSeries.class, file).rows()) {
            Length diameter = Length.of(row.get("diameter"), metric ? Unit.MILLIMETRE : Unit.INCH);
            headings.stream()
                    .flatMap(heading -> Table.several(row.get(heading)).stream())
                    .map(cell -> metric ? Length.of(cell, Unit.MILLIMETRE) : ScrewThread.pitchOf(new BigDecimal(cell)))
                    .forEach(pitch -> threads.add(new ScrewThread(form, diameter, pitch, 1)));
        }
        return threads;
    }
}
