package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.with;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Operation;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlanBuilder;
import org.tenthwise.model.plan.PlugFeel;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepBuilder;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;

/** A figure that comes before its check was opened belongs to it only within five tolerances. By hand. */
class UnaskedReadingTest {

    private static final Check BORE = Bench.size(Feature.BORE, "30.000", "30.020", Combine.EACH, 2);

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # middle 30.010; five times 0.020 is 0.100
        30.110, true
        30.111, false
        29.910, true
        29.909, false
        """)
    void aSizeOpensItsCheckWithinFiveTolerancesOfTheMiddle(String read, boolean opens) {
        assertEquals(opens, opening(BORE, Optional.empty()).orElseThrow().fits(length(read)));
    }

    @Test
    void aComparingGaugeOpensItsCheckAroundWhereItStandsAtTheMiddle() {
        // set on 30.005 at 0.030, falling: the middle, 0.005 above the master, stands at 0.025
        Setting set = Setting.onMaster(
                new Gauge("BG-1", GaugeKind.BORE_GAUGE, Optional.of(ReadingDirection.FALLS_WITH_SIZE)),
                "M",
                mm("30.005"),
                mm("0.030"));
        Expected expected = opening(BORE, Optional.of(set)).orElseThrow();
        assertEquals(length("0.025"), expected.about());
        assertEquals(length("0.100"), expected.room());
    }

    @ParameterizedTest
    @CsvSource({"0.100, true", "-0.100, true", "0.101, false"})
    void anIndicatorOpensItsCheckWithinFiveTimesTheLimitOfZero(String read, boolean opens) {
        assertEquals(
                opens,
                opening(Bench.runOut("0.02", 4, "0", "90", "180", "270"), Optional.empty())
                        .orElseThrow()
                        .fits(length(read)));
    }

    @ParameterizedTest
    @CsvSource({"30.110, true", "30.111, false"})
    void aPlugOpensItsCheckWithinFiveTolerancesOfItsBore(String read, boolean opens) {
        Check plug = new PlugFitCheck(
                1, Limits.between(mm("0.005"), mm("0.035")), places(1), PlugFeel.FREELY, with(GaugeKind.MICROMETER));
        assertEquals(opens, opening(plug, Optional.empty()).orElseThrow().fits(length(read)));
    }

    /** Over the wire 1.443 the middle 18.250 reads 20.414 and up to 0.01 more for the lead; five times 0.1 is 0.5. */
    @Test
    void aReadingOverWiresOpensItsCheckWithinFiveTolerancesOfWhereTheMiddleReads() {
        Check wires = new OverWiresCheck(
                new ScrewThread(ThreadForm.METRIC, length("20"), length("2.5"), 1),
                Limits.between(mm("18.2"), mm("18.3")),
                Optional.empty(),
                Optional.empty(),
                places(1),
                1,
                Combine.EACH,
                true,
                mm("0"),
                with(GaugeKind.MICROMETER_OVER_WIRES));
        Expected expected = opening(wires, Optional.of(Bench.wires("1.443"))).orElseThrow();
        assertEquals(length("0.5"), expected.room());
        assertTrue(expected.fits(length("20.913")));
        assertFalse(expected.fits(length("20.925")));
    }

    @Test
    void whereNoToleranceSaysHowFarNoUnaskedFigureOpensACheck() {
        Check atMost = new SizeCheck(
                Feature.DEPTH,
                Limits.atMost(mm("5")),
                places(1),
                1,
                Combine.EACH,
                false,
                mm("0"),
                with(GaugeKind.DEPTH_GAUGE));
        assertEquals(Optional.empty(), opening(atMost, Optional.empty()));
        assertEquals(
                Optional.empty(), opening(Bench.size(Feature.DEPTH, "0", "0.05", Combine.RANGE, 2), Optional.empty()));
        assertEquals(Optional.empty(), opening(new AskedCheck.Confirm("gripped"), Optional.empty()));
    }

    /** The bore is step 1 of the plan, the check asked about step 2. */
    private static Optional<Expected> opening(Check check, Optional<Setting> setting) {
        Plan plan = new PlanBuilder(
                        new PartId("X-1", "A"),
                        Unit.MILLIMETRE,
                        List.of(new Operation(10, "All")),
                        List.of(step(1, BORE), step(2, check)))
                .name("Trial")
                .build();
        return Plausible.opening(plan, check, setting);
    }

    private static Step step(int number, Check check) {
        return new StepBuilder(number, 10, "Step " + number, check).build();
    }
}
