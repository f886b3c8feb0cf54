package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.size;
import static org.tenthwise.model.record.Bench.with;

import java.math.RoundingMode;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * M20 over wires of 1.443, pitch diameter 18.2 to 18.3, on a root of 16.5 at the least. Over 20.600 the flanks stand
 * 0.184 out of the middle, over 20.500 still 0.084: a root of 16.650 before the first cut is 16.550 after it, and
 * 16.466 in the end.
 */
class RootCutSinceTest {

    private static final int ROOT = 1;
    private static final int WIRES = 2;
    private static final ScrewThread VEE = new ScrewThread(ThreadForm.METRIC, length("20"), length("2.5"), 1);

    private final Bench bench = new Bench()
            .step(size(Feature.DIAMETER, "16.5", "17.2", Combine.EACH, 1))
            .step(overWires(1));

    @ParameterizedTest
    @CsvSource({"16.650, 0.034", "16.683, 0.001", "16.685,"})
    void whatCameOffSinceItWasMeasuredIsTakenOffTheRoot(String root, String under) {
        bench.read(ROOT, root);
        over("20.600").cut();
        over("20.500");
        assertUnder(under);
        assertEquals(under != null, found().rootStale());
        assertEquals(under == null, found().proposal().isPresent());
    }

    @Test
    void severalCutsAddUp() {
        bench.read(ROOT, "16.800");
        over("20.800").cut();
        over("20.700").cut();
        over("20.500");
        assertUnder("0.084");
    }

    @Test
    void theRootMeasuredAnewCountsAsItIs() {
        bench.read(ROOT, "16.650");
        over("20.600").cut();
        bench.read(ROOT, "16.600");
        over("20.500");
        assertOffered();
    }

    @Test
    void measuredAgainWithoutACutNothingCameOff() {
        bench.read(ROOT, "16.650");
        over("20.600").did(new StepEvent.PassBegun(WIRES, Why.MEASURED_AGAIN));
        over("20.500");
        assertOffered();
    }

    /** By the readings the cut left 0.004 more: the root did not grow. */
    @Test
    void theRootNeverGrows() {
        bench.read(ROOT, "16.583");
        over("20.496").cut();
        over("20.500");
        assertUnder("0.001");
    }

    /** 0.184 was asked, and the root had room for it: 16.700 less that and 0.084 more. */
    @Test
    void whereTheReadingsBeforeACutWereStruckOutWhatWasAskedCounts() {
        bench.read(ROOT, "16.700");
        over("20.600").cut().did(new Event.StruckOut(4, "chip under the wire"));
        over("20.500");
        assertUnder("0.068");
    }

    @ParameterizedTest
    @CsvSource({"false, false", "true, true"})
    void whereNobodyCanTellTheRootIsToBeMeasuredAgain(boolean struckOut, boolean stale) {
        bench.read(ROOT, "17.100");
        over("20.600")
                .did(new StepEvent.DispositionSigned(
                        WIRES, Disposition.REWORK, "Chase it", "Inspector 1", Optional.empty()));
        if (struckOut) {
            bench.did(new Event.StruckOut(4, "chip under the wire"));
        }
        over("20.500");
        assertEquals(stale, found().rootStale());
        assertEquals(Optional.empty(), found().rootUnder());
        assertEquals(!stale, found().proposal().isPresent());
        assertEquals(VerdictKind.CUT_AGAIN, found().verdict().standing());
    }

    /** What may come off at the most takes the root down as well: 0.1 between the places, 18.2 at the least. */
    @ParameterizedTest
    @CsvSource({"16.700, true", "16.550, false"})
    void whatMayComeOffAtTheMostLeavesTheRootItsLimitToo(String root, boolean said) {
        Bench uneven = new Bench()
                .step(size(Feature.DIAMETER, "16.5", "17.2", Combine.EACH, 1))
                .step(overWires(2))
                .read(ROOT, root)
                .did(new StepEvent.GaugeSet(WIRES, Bench.wires("1.443")))
                .read(WIRES, "20.600", "20.480");
        OverWiresFinding found = (OverWiresFinding) uneven.finding(WIRES);
        assertEquals(said, found.proposal().isPresent());
        assertEquals(!said, found.rootUnder().isPresent());
    }

    private static OverWiresCheck overWires(int places) {
        return new OverWiresCheck(
                VEE,
                Limits.between(mm("18.2"), mm("18.3")),
                Optional.empty(),
                Optional.of(ROOT),
                places(places),
                1,
                Combine.EACH,
                true,
                mm("0"),
                with(GaugeKind.MICROMETER_OVER_WIRES));
    }

    private RootCutSinceTest over(String reading) {
        bench.did(new StepEvent.GaugeSet(WIRES, Bench.wires("1.443"))).read(WIRES, reading);
        return this;
    }

    private RootCutSinceTest cut() {
        return did(new StepEvent.PassBegun(WIRES, Why.CUT));
    }

    private RootCutSinceTest did(Event event) {
        bench.did(event);
        return this;
    }

    private void assertUnder(String under) {
        assertEquals(
                Optional.ofNullable(under).map(Bench::length),
                found().rootUnder().map(RootCutSinceTest::toTheLastPlace));
    }

    private void assertOffered() {
        assertUnder(null);
        assertEquals(true, found().proposal().flatMap(Proposal::change).isPresent());
    }

    private static Length toTheLastPlace(Length length) {
        return new Length(length.millimetres().setScale(3, RoundingMode.HALF_UP));
    }

    private OverWiresFinding found() {
        return (OverWiresFinding) bench.finding(WIRES);
    }
}
