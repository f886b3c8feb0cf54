package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.history.MatterKind;
import org.tenthwise.app.matters.OpenMatter;
import org.tenthwise.app.matters.OpenMatters;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.record.GaugesUsed;
import org.tenthwise.model.run.SignedAs;

/** A certificate is typed once, comes by itself to later runs, and changes nothing in those of before. */
class CalibrationSessionTest {

    private static final GaugeOrMaster GAUGE = GaugeOrMaster.gauge("BG-2", GaugeKind.BORE_GAUGE);
    private static final GaugeOrMaster RING = GaugeOrMaster.master("30.000");

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private static Calibration calibration(String certificate, String due) {
        return new Calibration(certificate, Optional.of(LocalDate.parse(due)));
    }

    private static List<String> used(RunSession run) {
        return GaugesUsed.in(run.state().sheet()).stream()
                .filter(used -> List.of(GAUGE, RING).contains(used.what()))
                .map(used -> used.what().mark() + " " + used.calibration().certificate())
                .toList();
    }

    private List<String> pastDue() {
        return matters().stream()
                .map(matter -> matter.run().orElseThrow().serial() + " "
                        + matter.matter().about() + " " + matter.matter().number())
                .toList();
    }

    private List<OpenMatter> matters() {
        return new OpenMatters(workshop.ledger())
                .all(Optional.empty(), Optional.empty()).stream()
                        .filter(matter -> matter.matter().kind() == MatterKind.GAUGE_PAST_DUE)
                        .toList();
    }

    @Test
    void whatIsSaidOnceComesByItselfToTheNextRun() throws Exception {
        RunSession first = workshop.atTheBore("014");
        first.gauge().calibrated(GAUGE, calibration("K-1", "2027-03-31"), false);
        first.gauge().calibrated(RING, calibration("K-9", "2028-03-31"), true);
        first.enter("0.012");
        RunSession second = workshop.atTheBore("015", "0.012");
        assertEquals(List.of("BG-2 K-1", "30.000 K-9"), used(first));
        assertEquals(List.of("BG-2 K-1", "30.000 K-9"), used(second));
    }

    @Test
    void whatIsSaidLaterRewritesNothingInRunsOfBefore() throws Exception {
        RunSession first = workshop.atTheBore("014");
        first.gauge().calibrated(GAUGE, calibration("K-1", "2026-11-01"), false);
        first.enter("0.012");
        List<StoredEntry> before = workshop.ledger().stored(first.id());
        RunSession second = workshop.atTheBore("015", "0.012");
        second.gauge().calibrated(GAUGE, calibration("K-2", "2027-11-01"), true);

        assertEquals(before, workshop.ledger().stored(first.id()));
        assertEquals(List.of("014 BG-2 2026-11-01"), pastDue());
        assertEquals(List.of("BG-2 K-1"), used(workshop.shop.open(first.id())).subList(0, 1));
        assertEquals(List.of("BG-2 K-2"), used(second).subList(0, 1));
        RunSession third = workshop.atTheBore("016", "0.012");
        assertEquals(List.of("BG-2 K-2"), used(third).subList(0, 1));
    }

    @Test
    void aRunGoneOnWithTakesWhatIsKnownByThenForWhatIsReadFromThenOn() throws Exception {
        RunSession first = workshop.atTheBore("014");
        first.gauge().calibrated(GAUGE, calibration("K-1", "2026-11-01"), false);
        first.enter("0.012");
        workshop.atTheBore("015").gauge().calibrated(GAUGE, calibration("K-2", "2027-11-01"), false);
        assertEquals(List.of(), first.state().pastDue());
        first.enter("0.013");
        assertEquals(List.of("014 BG-2 2026-11-01"), pastDue());
        assertEquals(List.of("BG-2 K-1", "30.000 ", "BG-2 K-2"), used(first));
    }

    @Test
    void aDueDayTypedWrongIsSeenBeforeTheReadingAndGoneOnceItIsPutRight() throws Exception {
        RunSession run = workshop.atTheBore("014");
        run.gauge().calibrated(GAUGE, calibration("K-1", "2025-03-31"), false);
        assertEquals(
                List.of(GAUGE),
                run.state().pastDue().stream().map(CalibratedHere::what).toList());
        run.enter("0.012");
        assertEquals(List.of("014 BG-2 2025-03-31"), pastDue());
        run.gauge().calibrated(GAUGE, calibration("K-1", "2027-03-31"), true);
        assertEquals(List.of(), pastDue());
        assertEquals(List.of(), run.state().pastDue());
    }

    @Test
    void aMatterIsSettledByASignatureOnceItsRunIsClosed() throws Exception {
        RunSession run = workshop.atTheBore("014");
        run.gauge().calibrated(GAUGE, calibration("K-1", "2025-03-31"), false);
        run.enter("0.012");
        assertEquals(
                List.of(false), matters().stream().map(OpenMatter::canBeSettled).toList());
        run.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        workshop.matterBook().settle(matters().get(0), "Inspector 1", "Calibrated since, within its limits", "");
        assertEquals(List.of(false), matters().stream().map(OpenMatter::isOpen).toList());
    }

    @Test
    void twoCertificatesPastTheirDaysAreTwoMattersAndASignatureIsForOne() throws Exception {
        RunSession run = workshop.atTheBore("014");
        run.gauge().calibrated(GAUGE, calibration("K-1", "2026-11-01"), false);
        run.enter("0.012");
        run.gauge().calibrated(GAUGE, calibration("K-2", "2026-11-10"), false);
        run.enter("0.013");
        assertEquals(List.of("014 BG-2 2026-11-01", "014 BG-2 2026-11-10"), pastDue());
        run.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        workshop.matterBook().settle(matters().get(1), "Inspector 1", "Calibrated since, within its limits", "");
        assertEquals(
                List.of(true, false), matters().stream().map(OpenMatter::isOpen).toList());
    }

    @Test
    void aGaugeMarkedAsItsRingIsHidesNothingOfIt() throws Exception {
        GaugeOrMaster marked = GaugeOrMaster.gauge("30.000", GaugeKind.BORE_GAUGE);
        RunSession run = workshop.atTheBore("014");
        run.gauge().choose("30.000");
        run.gauge().calibrated(marked, calibration("K-1", "2026-11-01"), false);
        run.gauge().calibrated(RING, calibration("K-9", "2026-11-10"), false);
        run.gauge().tellSense(false);
        run.enter("30.000");
        run.enter("");
        run.gauge().confirmSense(true);
        run.enter("0.012");
        assertEquals(List.of("014 30.000 2026-11-01", "014 30.000 2026-11-10"), pastDue());
    }

    @Test
    void nothingIsSaidInARunThatIsClosed() throws Exception {
        RunSession run = workshop.atTheBore("014", "0.012");
        run.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        List<StoredEntry> before = workshop.ledger().stored(run.id());
        assertTrue(run.gauge()
                .calibrated(GAUGE, calibration("K-1", "2025-03-31"), true)
                .objection()
                .isPresent());
        assertEquals(before, workshop.ledger().stored(run.id()));
    }

    @Test
    void whatIsSaidTwiceIsKeptOnce() throws Exception {
        RunSession run = workshop.atTheBore("014");
        run.gauge().calibrated(GAUGE, calibration("K-1", "2027-03-31"), false);
        int before = run.state().sheet().run().entries().size();
        run.gauge().calibrated(GAUGE, calibration("K-1", "2027-03-31"), false);
        assertEquals(before, run.state().sheet().run().entries().size());
    }
}
