package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/** Everything here is read on 25 November 2026, as the clock of the station has it, from half past seven on. */
class GaugesUsedTest {

    private static final Gauge BORE_GAUGE =
            new Gauge("BG-1", GaugeKind.BORE_GAUGE, Optional.of(ReadingDirection.RISES_WITH_SIZE));
    private static final Gauge MICROMETER = new Gauge("MC-1", GaugeKind.MICROMETER, Optional.empty());
    private static final GaugeOrMaster OF_MICROMETER = GaugeOrMaster.of(MICROMETER);
    private static final Setting DIRECT = Setting.direct(MICROMETER);
    private static final Setting ON_RING = Setting.onMaster(BORE_GAUGE, "R-30", Bench.mm("30.002"), Bench.mm("0.000"));

    private final Bench bench = new Bench()
            .step(Bench.size(Feature.DIAMETER, "30.000", "30.050", Combine.EACH, 2))
            .step(Bench.size(Feature.DIAMETER, "20.000", "20.050", Combine.EACH, 1));

    private static Event known(GaugeOrMaster what, String certificate, String due) {
        return new ShopEvent.CalibrationKnown(what, calibration(certificate, due), false);
    }

    private static Event putRight(GaugeOrMaster what, String certificate, String due) {
        return new ShopEvent.CalibrationKnown(what, calibration(certificate, due), true);
    }

    private static Calibration calibration(String certificate, String due) {
        return new Calibration(
                certificate, Optional.of(due).filter(day -> !day.isEmpty()).map(LocalDate::parse));
    }

    private List<String> pastDue() {
        return GaugesUsed.pastDue(bench.sheet()).stream()
                .map(used -> used.what().mark() + " " + used.calibration().certificate() + " " + used.pastDueAt())
                .toList();
    }

    private Bench read(int step, String... figures) {
        return bench.did(new StepEvent.GaugeSet(step, DIRECT)).read(step, figures);
    }

    @Test
    void aGaugeIsInDateOnItsDueDayAndPastItOnTheNext() {
        bench.did(known(OF_MICROMETER, "K-1", "2026-11-25"));
        read(1, "30.010", "30.012");
        assertEquals(List.of(), pastDue());
        bench.later(16 * 60 + 29, "Setter 2"); // 07:31 and that is midnight
        read(2, "20.010");
        assertEquals(List.of("MC-1 K-1 [2]"), pastDue());
    }

    @Test
    void whatIsNotStatedIsPastNoDay() {
        bench.did(known(OF_MICROMETER, "K-1", ""));
        read(1, "30.010", "30.012");
        assertEquals(List.of(), pastDue());
        assertEquals(
                List.of(calibration("K-1", "")),
                GaugesUsed.in(bench.sheet()).stream()
                        .map(GaugesUsed.Used::calibration)
                        .toList());
    }

    @Test
    void theVerdictIsTheSamePastTheDueDay() {
        read(1, "30.010", "30.012");
        Finding without = bench.finding(1);
        bench.did(putRight(OF_MICROMETER, "K-1", "2024-01-31"));
        assertEquals(List.of("MC-1 K-1 [1]"), pastDue());
        assertEquals(without, bench.finding(1));
    }

    @Test
    void aDueDayTypedWrongAndPutRightWasNeverPast() {
        bench.did(known(OF_MICROMETER, "K-1", "2025-03-31"));
        read(1, "30.010", "30.012");
        assertEquals(List.of("MC-1 K-1 [1]"), pastDue());
        bench.did(putRight(OF_MICROMETER, "K-1", "2027-03-31"));
        assertEquals(List.of(), pastDue());
    }

    @Test
    void aGaugeCalibratedAnewWasPastItsDayUntilThen() {
        bench.did(known(OF_MICROMETER, "K-1", "2026-11-01"));
        read(1, "30.010", "30.012");
        bench.did(known(OF_MICROMETER, "K-2", "2027-11-01"));
        read(2, "20.010");
        assertEquals(List.of("MC-1 K-1 [1]"), pastDue());
    }

    @Test
    void whatIsPutRightIsTheCertificateOfThenAndNotTheOneBefore() {
        bench.did(known(OF_MICROMETER, "K-1", "2026-11-01"));
        read(1, "30.010", "30.012");
        bench.did(known(OF_MICROMETER, "K-2", "2020-11-01"));
        read(2, "20.010");
        bench.did(putRight(OF_MICROMETER, "K-3", "2027-11-01"));
        assertEquals(List.of("MC-1 K-1 [1]"), pastDue());
        assertEquals(
                List.of("K-1", "K-3"),
                GaugesUsed.in(bench.sheet()).stream()
                        .map(used -> used.calibration().certificate())
                        .toList());
    }

    @Test
    void readingsBeforeACertificateWasSaidHaveNoneUnlessItIsSaidOfThemToo() {
        read(1, "30.010", "30.012");
        bench.did(known(OF_MICROMETER, "K-1", "2027-11-01"));
        read(2, "20.010");
        assertEquals(
                List.of("", "K-1"),
                GaugesUsed.in(bench.sheet()).stream()
                        .map(used -> used.calibration().certificate())
                        .toList());
    }

    @Test
    void aRingIsPastItsDayWhereAGaugeWasSetOnItThatDayOrLater() {
        bench.did(known(GaugeOrMaster.master("R-30"), "K-9", "2026-11-25"))
                .did(known(GaugeOrMaster.of(BORE_GAUGE), "K-8", "2030-01-31"))
                .did(new StepEvent.GaugeSet(1, ON_RING))
                .later(24 * 60, "Setter 1")
                .read(1, "0.010", "0.012");
        assertEquals(List.of(), pastDue());
        bench.did(new StepEvent.GaugeSet(1, ON_RING)).read(1, "0.010", "0.012");
        assertEquals(List.of("R-30 K-9 [1]"), pastDue());
    }

    @Test
    void aRingIsNoGaugeOfTheSameMark() {
        bench.did(known(GaugeOrMaster.master("MC-1"), "K-1", "2020-11-01"));
        read(1, "30.010", "30.012");
        assertEquals(List.of(), pastDue());
    }

    @Test
    void whatWasMeasuredAgainWithAGaugeInDateIsPastNoDayAnyMore() {
        bench.did(known(OF_MICROMETER, "K-1", "2026-11-01"));
        read(1, "30.010", "30.012");
        bench.did(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.MEASURED_AGAIN))
                .did(new StepEvent.GaugeSet(
                        1, Setting.direct(new Gauge("MC-2", GaugeKind.MICROMETER, Optional.empty()))))
                .read(1, "30.010", "30.012");
        assertEquals(List.of(), pastDue());
        assertEquals(
                List.of("MC-1", "MC-2"),
                GaugesUsed.in(bench.sheet()).stream()
                        .map(used -> used.what().mark())
                        .toList());
    }

    @Test
    void whatWasStruckOutWasReadWithNone() {
        bench.did(known(OF_MICROMETER, "K-1", "2026-11-01")).did(new StepEvent.GaugeSet(1, DIRECT));
        long setting = bench.last();
        bench.read(1, "30.010", "30.012");
        bench.did(new Event.StruckOut(setting, "gauge was off"));
        assertEquals(List.of(), GaugesUsed.in(bench.sheet()));
    }

    @Test
    void anAcceptanceLapsesWhereACertificateIsPutRightAndNotWhereOneIsSaidOfWhatFollows() {
        read(1, "30.010", "30.012");
        read(2, "20.010");
        bench.did(new Event.Signed("Inspector 1", SignedAs.ACCEPTED)).did(known(OF_MICROMETER, "K-1", "2027-11-01"));
        assertEquals(List.of(false), lapsed());
        bench.did(putRight(OF_MICROMETER, "K-1", "2024-11-01"));
        assertEquals(List.of(true), lapsed());
    }

    private List<Boolean> lapsed() {
        return bench.sheet().run().signatures().stream().map(Signature::lapsed).toList();
    }
}
