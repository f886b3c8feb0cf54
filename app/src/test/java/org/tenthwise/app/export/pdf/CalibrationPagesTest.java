package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.export.CalibrationRecordTest;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.picture.RecordingPen;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.words.Words;

/** Gauges and their certificates on the printed record. */
class CalibrationPagesTest {

    private static String whole(List<RecordingPen> pages) {
        return pages.stream().map(PrintedPages::text).collect(Collectors.joining(" "));
    }

    @Test
    void whatIsPastItsDueDayStandsOnThePagesToDecideOn() {
        String first = PrintedPages.text(
                PrintedPages.of(Words.ENGLISH, CalibrationRecordTest.evidence()).get(0));
        assertTrue(
                first.contains(
                        "master R-20 was past its due day, 2026-11-24, at check 1. Judged like any other reading;"),
                first);
        assertEquals(1, first.split("past its due day", -1).length - 1, first);
    }

    @Test
    void whatIsPastItsDueDayIsReadBeforeAnyFigure() {
        String first = PrintedPages.text(PrintedPages.of(
                        Words.ENGLISH, Records.whole(DemoPart.SCREW_CARRIER, Records.failing(DemoPart.SCREW_CARRIER)))
                .get(0));
        int past = first.indexOf("DG-1 was past its due day");
        assertTrue(past >= 0 && past < first.indexOf("Where it"), first);
    }

    @Test
    void everyGaugeStandsInTheTableWithItsCertificateAndItsChecks() {
        String all = whole(PrintedPages.of(Words.ENGLISH, CalibrationRecordTest.evidence()));
        assertTrue(all.contains("BG-1 dial bore gauge =K-1 2026-11-25 1"), all);
        assertTrue(all.contains("MC-1 micrometer not stated"), all);
    }

    @Test
    void theGaugeOfTheFailingDemoThatIsPastItsDueDayIsNamed() {
        String all = whole(PrintedPages.of(
                Words.ENGLISH, Records.whole(DemoPart.SCREW_CARRIER, Records.failing(DemoPart.SCREW_CARRIER))));
        assertTrue(all.contains("DG-1 was past its due day, 2024-09-30"), all);
    }
}
