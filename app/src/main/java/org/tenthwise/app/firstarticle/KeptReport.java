package org.tenthwise.app.firstarticle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.JoinedRun;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.run.ReportEvent;
import org.tenthwise.model.run.ReportRole;

/**
 * A report as it stands in the ledger: what was drawn up last under its identifier, and who signed that.
 *
 * @param drawnUp holds what was asked and which runs were joined
 * @param signed what was signed since, in order
 */
public record KeptReport(Entry drawnUp, List<Entry> signed) {

    public KeptReport {
        signed = List.copyOf(signed);
    }

    /** Every report of a store, in the order they were drawn up. */
    public static List<KeptReport> in(KeptEntries kept) {
        Map<String, KeptReport> reports = new LinkedHashMap<>();
        for (Entry entry : kept.entries(Entry.SHOP)) {
            entry.event().as(ReportEvent.ReportDrawnUp.class).ifPresent(drawn -> {
                reports.remove(drawn.asked().identifier());
                reports.put(drawn.asked().identifier(), new KeptReport(entry, List.of()));
            });
            entry.event()
                    .as(ReportEvent.ReportSigned.class)
                    .ifPresent(signed ->
                            reports.computeIfPresent(signed.report(), (identifier, report) -> report.with(entry)));
        }
        return List.copyOf(reports.values());
    }

    /** The report of that identifier; absent where none was drawn up under it. */
    public static Optional<KeptReport> named(String identifier, KeptEntries kept) {
        return in(kept).stream()
                .filter(report -> report.asked().identifier().equals(identifier))
                .findFirst();
    }

    private KeptReport with(Entry signature) {
        List<Entry> more = new ArrayList<>(signed);
        more.add(signature);
        return new KeptReport(drawnUp, more);
    }

    private ReportEvent.ReportDrawnUp event() {
        return drawnUp.event().as(ReportEvent.ReportDrawnUp.class).orElseThrow();
    }

    /** What was said of it when it was drawn up. */
    public ReportAsked asked() {
        return event().asked();
    }

    /** What it joins, each run as it stood then. */
    public List<JoinedRun> runs() {
        return event().runs();
    }

    /** Who signed last in a role, and when; absent while nobody has. */
    public Optional<Entry> signedAs(ReportRole role) {
        return signed.stream()
                .filter(entry -> entry.event()
                        .as(ReportEvent.ReportSigned.class)
                        .filter(by -> by.role() == role)
                        .isPresent())
                .reduce((earlier, later) -> later);
    }

    /** The name on a signature. */
    static String name(Entry signature) {
        return signature.event().names().orElse("");
    }
}
