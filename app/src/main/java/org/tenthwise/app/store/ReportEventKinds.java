package org.tenthwise.app.store;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.tenthwise.model.run.JoinedRun;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.run.ReportEvent;
import org.tenthwise.model.run.ReportRole;
import org.tenthwise.model.words.Word;

/** The kinds of events that belong to a first-article report. */
final class ReportEventKinds {

    static final EventKind<ReportEvent.ReportDrawnUp> REPORT_DRAWN_UP = new EventKind<>(
            "report-drawn-up",
            13,
            ReportEvent.ReportDrawnUp.class,
            (drawnUp, to) -> {
                write(drawnUp.asked(), to.putObject("asked"));
                ArrayNode runs = to.putArray("runs");
                drawnUp.runs().forEach(joined -> runs.addObject()
                        .put("run", joined.run())
                        .put("entries", joined.entries())
                        .put("head", joined.head()));
            },
            from -> new ReportEvent.ReportDrawnUp(asked(from.object("asked")), joined(from.objectsIfAny("runs"))));

    static final EventKind<ReportEvent.ReportSigned> REPORT_SIGNED = new EventKind<>(
            "report-signed",
            14,
            ReportEvent.ReportSigned.class,
            (signed, to) -> to.put("report", signed.report())
                    .put("role", Word.of(signed.role()))
                    .put("signed-by", signed.signedBy()),
            from -> new ReportEvent.ReportSigned(
                    from.text("report"), from.word("role", ReportRole.class), from.text("signed-by")));

    private ReportEventKinds() {}

    private static void write(ReportAsked asked, ObjectNode to) {
        to.put("identifier", asked.identifier());
        EventJson.write(asked.part(), to.putObject("part"));
        to.put("edition", Word.of(asked.edition()));
        to.put("extent", Word.of(asked.extent()));
        to.put("reason", asked.reason());
        to.put("baseline", asked.baseline());
        ArrayNode affected = to.putArray("affected");
        asked.affected().forEach(affected::add);
        to.put("order", asked.order());
        to.put("organization", asked.organization());
        to.put("supplier-code", asked.supplierCode());
        to.put("route", asked.route());
        ArrayNode changes = to.putArray("changes");
        asked.changes().forEach(changes::add);
        if (asked.assembly()) {
            to.put("assembly", true);
        }
        to.put("comments", asked.comments());
    }

    private static ReportAsked asked(JsonFields from) throws UnreadableEntry {
        ReportAsked asked = new ReportAsked(
                from.text("identifier"),
                EventJson.part(from.object("part")),
                from.word("edition", ReportAsked.Edition.class),
                from.word("extent", ReportAsked.Extent.class),
                from.text("reason"),
                from.text("baseline"),
                from.textsIfAny("affected"),
                from.text("order"),
                from.text("organization"),
                from.text("supplier-code"),
                from.text("route"),
                from.textsIfAny("changes"),
                from.isSo("assembly"),
                from.text("comments"));
        from.end();
        return asked;
    }

    private static List<JoinedRun> joined(List<JsonFields> runs) throws UnreadableEntry {
        List<JoinedRun> joined = new ArrayList<>();
        for (JsonFields run : runs) {
            joined.add(new JoinedRun(run.text("run"), run.whole("entries"), run.text("head")));
            run.end();
        }
        return joined;
    }
}
