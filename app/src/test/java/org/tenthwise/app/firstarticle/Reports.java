package org.tenthwise.app.firstarticle;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.app.export.Records;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.firstarticle.FirstArticle;
import org.tenthwise.model.firstarticle.PartBefore;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.JoinedRun;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.run.ReportEvent;
import org.tenthwise.model.run.ReportRole;

/** Reports on the whole invented drawings, as if they stood in a ledger. */
public final class Reports {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-27T10:15:00+01:00");

    private Reports() {}

    /** On a part walked with each of the readings: one run each, with serials 1, 2 ... behind the readings' own. */
    public static ArticleReport of(ExamplePart part, ReportAsked.Edition edition, String... readings) {
        List<Sheet> sheets = IntStream.range(0, readings.length)
                .mapToObj(i -> Records.whole(
                                part.plan(), readings[i].replaceFirst("serial = \"", "serial = \"" + (i + 1) + "-"))
                        .sheet())
                .toList();
        ReportAsked asked = asked(part.plan().part(), edition);
        Event drawn = new ReportEvent.ReportDrawnUp(
                asked,
                sheets.stream()
                        .map(sheet -> new JoinedRun(
                                sheet.run().id(), sheet.run().entries().size(), "4f".repeat(32)))
                        .toList());
        List<Entry> signed = Stream.of(
                        new ReportEvent.ReportSigned("F-12", ReportRole.VERIFIED, "Inspector 1"),
                        new ReportEvent.ReportSigned("F-12", ReportRole.APPROVED, "Quality lead"))
                .map(event -> new Entry(402, Entry.SHOP, AT.plusHours(1), event.signedBy(), event))
                .toList();
        return new ArticleReport(
                FirstArticle.of(
                        asked, sheets, new PartBefore(Optional.of(LocalDate.parse("2023-06-01")), Optional.empty())),
                Optional.of(new KeptReport(new Entry(400, Entry.SHOP, AT, "Planner 1", drawn), signed)),
                List.of(),
                "0.1.0");
    }

    private static ReportAsked asked(PartId part, ReportAsked.Edition edition) {
        return new ReportAsked(
                "F-12",
                part,
                edition,
                ReportAsked.Extent.FULL,
                "first production run of the part",
                "",
                List.of(),
                "PO-4471",
                "Invented lock works",
                "S-209",
                "R-31 issue 2",
                List.of("=ECN 12"),
                false,
                "Parts of the lifting gear of an invented canal lock.");
    }
}
