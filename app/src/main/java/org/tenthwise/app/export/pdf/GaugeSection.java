package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.model.record.GaugesUsed;

/** The gauges the run was read with, and what they were set on, each with its certificate and its checks. */
final class GaugeSection {

    private static final Column GAUGE = Column.words("record.column.gauge", PageFlow.LEFT, 110);
    private static final Column KIND = Column.words("record.column.kind", PageFlow.LEFT + 116, 150);
    private static final Column CERTIFICATE = Column.words("record.column.certificate", PageFlow.LEFT + 272, 130);
    private static final Column DUE = Column.words("record.column.due", PageFlow.LEFT + 408, 140);
    private static final Column CHECKS = Column.words("record.column.used-at", PageFlow.LEFT + 554, 144);
    private static final double LEAST = 70;

    private final RecordContext matter;
    private final PageFlow flow;

    GaugeSection(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
    }

    /** Nothing where nothing was read with a gauge. */
    void add() {
        List<GaugesUsed.Used> used = GaugesUsed.in(matter.sheet());
        if (used.isEmpty()) {
            return;
        }
        flow.need(LEAST);
        flow.heading(matter.say("record.gauges"));
        head();
        used.forEach(one -> row(one).into(flow, this::head));
    }

    private void head() {
        flow.head(List.of(GAUGE, KIND, CERTIFICATE, DUE, CHECKS), matter::say, 2, Strokes.THIN);
    }

    private Row row(GaugesUsed.Used one) {
        String certificate = one.calibration().certificate();
        List<String> due = new ArrayList<>();
        one.calibration().due().ifPresent(day -> due.add(day.toString()));
        if (!one.pastDueAt().isEmpty()) {
            due.add(matter.say(
                    "record.past-due",
                    List.copyOf(one.pastDueAt()),
                    one.pastDueAt().size()));
        }
        Row row = new Row(flow.wrapping())
                .text(GAUGE, one.what().mark(), Style.SMALL_BOLD)
                .text(
                        KIND,
                        one.what()
                                .kind()
                                .map(kind -> new GaugeWords(matter.words()).kindOf(kind))
                                .orElseGet(() -> matter.say("record.gauges.master")),
                        Style.CELL)
                .text(
                        CERTIFICATE,
                        certificate.isEmpty() ? matter.say("record.gauges.not-stated") : certificate,
                        certificate.isEmpty() ? Style.SMALL : Style.CELL);
        due.forEach(line -> row.text(DUE, line, one.pastDueAt().isEmpty() ? Style.CELL : Style.SMALL_BOLD));
        return row.text(
                CHECKS, one.steps().stream().map(String::valueOf).collect(Collectors.joining(" ")), Style.SMALL);
    }
}
