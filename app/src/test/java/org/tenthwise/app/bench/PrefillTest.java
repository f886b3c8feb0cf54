package org.tenthwise.app.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/** What a step of the demo parts fills in. */
class PrefillTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private static FormValues of(Prefill prefill, BenchKind kind) {
        return Optional.ofNullable(prefill.filled().get(kind)).orElseThrow();
    }

    @Test
    void aBoreFillsInItsLimitsAndItsZone() {
        RunSession session = workshop.atTheBore("014", "0.013");
        Prefill prefill = Prefill.of(session.state());
        assertEquals(Optional.of(BenchKind.NEXT_CUT), prefill.fitting());
        FormValues cut = of(prefill, BenchKind.NEXT_CUT);
        assertEquals(
                List.of("inside", "30.000", "30.021", "each", "middle"),
                List.of(
                        cut.text("side"),
                        cut.text("lower"),
                        cut.text("upper"),
                        cut.text("combine"),
                        cut.text("aim_by")));
        assertEquals("", cut.text("sizes"), "one place of four: no cut follows from it");
        FormValues zone = of(prefill, BenchKind.ZONE);
        assertEquals(
                List.of("30", "hole", "H", "7"),
                List.of(zone.text("diameter"), zone.text("part"), zone.text("letter"), zone.text("grade")));
        FormValues warm = of(prefill, BenchKind.TEMPERATURE);
        assertEquals(
                List.of("30.013", "20", "20"),
                List.of(warm.text("reading"), warm.text("part_temp"), warm.text("gauge_temp")));
        ThermalData climate = session.state().sheet().plan().climate().orElseThrow();
        assertEquals(
                List.of(
                        climate.part().expansion().millionths().toPlainString(),
                        climate.gauge().expansion().millionths().toPlainString()),
                List.of(warm.text("part_alpha"), warm.text("gauge_alpha")));
    }

    /** What the flanks leave, the step says; the sum would go to the middle of the depth whatever they are. */
    @Test
    void ofTheDepthOfAThreadThatIsToBeCutNoSizesAreFilledIn() {
        RunSession session = Workshop.toTheThread(workshop.atTheBore("014", "0.013", "0.011", "0.012", "0.010"));
        session.goTo(22);
        for (String entered : List.of("3.975", "3.978", "3.976", "3.979", "3.975")) {
            Workshop.must(() -> session.enter(entered));
        }
        assertTrue(session.state().line().finding().forbidsCutting());
        assertEquals("", of(Prefill.of(session.state()), BenchKind.NEXT_CUT).text("sizes"));
    }

    @Test
    void theSizesAreFilledInOnceEveryPlaceIsRead() {
        RunSession session = workshop.atTheBore("014", "0.013");
        for (String entered : List.of("0.011", "0.012", "0.010")) {
            Workshop.must(() -> session.enter(entered));
        }
        assertEquals(
                "30.013 30.011 30.012 30.01",
                of(Prefill.of(session.state()), BenchKind.NEXT_CUT).text("sizes"));
    }

    /**
     * Asked of the bench, the cut is the one the step tells: typed into a register of radii, one on diameter would come
     * off twice.
     */
    @Test
    void theCutIsCountedAndAimedAsOnTheMachineOfTheRun() {
        RunSession session = workshop.atTheBore("014", "-0.030", "-0.030", "-0.030", "-0.030");
        assertEquals(
                List.of("", "middle"),
                List.of(
                        of(Prefill.of(session.state()), BenchKind.NEXT_CUT).text("register"),
                        of(Prefill.of(session.state()), BenchKind.NEXT_CUT).text("aim_by")));
        Workshop.must(() -> session.machine(Register.RADIUS, Aim.ByLimits.THIRD));
        FormValues filled = of(Prefill.of(session.state()), BenchKind.NEXT_CUT);
        assertEquals(List.of("radius", "third"), List.of(filled.text("register"), filled.text("aim_by")));
        Workshop.must(() -> session.goTo(10));
        assertEquals(
                "third", of(Prefill.of(session.state()), BenchKind.NEXT_CUT).text("aim_by"));
        assertEquals(
                "",
                of(Prefill.of(session.state()), BenchKind.NEXT_CUT).text("register"),
                "a depth is typed into no register across the axis");
    }

    /**
     * A plan kept from before combines without a modifier: there every place is bound by the limits, on the step and so
     * on the bench.
     */
    @ParameterizedTest
    @CsvSource({"'', each", "'drawing_says = \"SA\"', mean"})
    void onlyWhereTheDrawingMakesOneSizeOfAllTheLimitsBindThatAlone(String says, String combined) {
        assertEquals(
                combined, of(Prefill.of(seat(says).state()), BenchKind.NEXT_CUT).text("combine"));
    }

    /** The step rounds its amount to what most registers hold, and so must the bench. */
    @Test
    void whereThePlanNamesNoStepOfTheRegisterTheUsualOneIsFilledIn() {
        assertEquals(
                "0.001", of(Prefill.of(seat("").state()), BenchKind.NEXT_CUT).text("offset_step"));
    }

    private RunSession seat(String says) {
        String text = InventedPlans.text(
                "mm",
                """
                [[step]]
                number = 1
                operation = 10
                kind = "bore"
                name = "Seat"
                method = "Both ends."
                lower = 30.000
                upper = 30.021
                places = ["front", "back"]
                combine = "mean"
                gauge_kind = "inside-micrometer"
                cut_again = "too small"
                """
                        + says);
        Plan plan = ((PlanReading.Good) new PlanReader().readKept(text)).plan();
        return Workshop.must(() -> workshop.shop.begin(new RunHeader(plan, "014", "", "Lathe 4", "Setter 2", true)));
    }

    /** The step says not to cut there: no offset comes out next to it by one touch. */
    @Test
    void aSizeThatThePlanDoesNotLetBeCutFillsInNoCut() {
        RunSession session = workshop.setUp("014");
        int step = session.state().sheet().plan().steps().stream()
                .filter(one -> one.check() instanceof SizeCheck size && !size.cutAgain())
                .findFirst()
                .orElseThrow()
                .number();
        Workshop.must(() -> session.goTo(step));
        assertFalse(Prefill.of(session.state()).filled().containsKey(BenchKind.NEXT_CUT));
        assertNotEquals(
                Optional.of(BenchKind.NEXT_CUT), Prefill.of(session.state()).fitting());
    }

    @Test
    void aClosedRunFillsInNoSizesToCutBy() {
        RunSession session = workshop.atTheBore("014", "0.013", "0.011", "0.012", "0.010");
        Workshop.must(() -> session.close("Inspector 1", SignedAs.NOT_ACCEPTED));
        assertEquals("", of(Prefill.of(session.state()), BenchKind.NEXT_CUT).text("sizes"));
    }

    @Test
    void afterACutThatLeftMoreMetalThanThereWasNoSizesAreFilledIn() {
        RunSession session = workshop.atTheBore("014", "-0.030", "-0.030", "-0.030", "-0.030");
        Workshop.must(() -> session.again(Why.CUT));
        for (String entered : List.of("20", "20", "-0.060", "-0.060", "-0.060", "-0.060")) {
            Workshop.must(() -> session.enter(entered));
        }
        assertEquals("", of(Prefill.of(session.state()), BenchKind.NEXT_CUT).text("sizes"));
    }

    /** A size corrected for temperature is not corrected a second time. */
    @Test
    void theReadingToBringToTwentyDegreesIsTheOneBeforeItsCorrection() {
        RunSession session = workshop.setUp("014");
        Workshop.must(() -> session.goTo(13));
        for (String entered : List.of("30.000", "", "27", "22", "0.013")) {
            Workshop.must(() -> session.state().asked() instanceof Prompt.WhichSense
                    ? session.gauge().tellSense(false)
                    : session.state());
            Workshop.must(() -> session.enter(entered));
            Workshop.must(() -> session.gauge().confirmSense(true));
        }
        FormValues warm = of(Prefill.of(session.state()), BenchKind.TEMPERATURE);
        assertEquals(
                List.of("30.013", "27", "22"),
                List.of(warm.text("reading"), warm.text("part_temp"), warm.text("gauge_temp")));
    }

    @Test
    void aRunOutFillsInItsReadingsAndItsJaws() {
        RunSession session = workshop.setUp("014");
        Workshop.must(() -> session.goTo(4));
        FormValues runOut = of(Prefill.of(session.state()), BenchKind.RUN_OUT);
        assertEquals("0.004 0.001 0.000 0.002 0.006 0.009 0.011 0.008", runOut.text("readings"));
        assertEquals("8", runOut.text("places"));
        assertEquals("0.020", runOut.text("limit"));
    }

    @Test
    void aThreadFillsInFormDiameterPitchAndWire() {
        RunSession session = workshop.setUp("014");
        Workshop.must(() -> session.goTo(21));
        Prefill prefill = Prefill.of(session.state());
        FormValues wires = of(prefill, BenchKind.WIRES);
        assertEquals(Optional.of(BenchKind.WIRES), prefill.fitting());
        assertEquals(List.of("trapezoidal", "pitch"), List.of(wires.text("form"), wires.text("pitch_by")));
        assertEquals(Unit.MILLIMETRE, wires.unit());
        assertEquals(
                wires.text("diameter"), of(prefill, BenchKind.THREAD_LIMITS).text("diameter"));
    }

    @Test
    void anInchThreadIsNamedByItsThreadsToTheInch() {
        RunSession session = workshop.begin(DemoPart.WINCH_BARREL_END, "003");
        int step = session.state().sheet().plan().steps().stream()
                .filter(one -> one.check() instanceof OverWiresCheck)
                .findFirst()
                .orElseThrow()
                .number();
        Workshop.must(() -> session.goTo(step));
        FormValues wires = of(Prefill.of(session.state()), BenchKind.WIRES);
        assertEquals(List.of("stub-acme", "tpi"), List.of(wires.text("form"), wires.text("pitch_by")));
        assertEquals(Unit.INCH, wires.unit());
    }

    @Test
    void aStepThatOnlyAsksFillsInNothing() {
        RunSession session = workshop.begin(DemoPart.SCREW_CARRIER, "014");
        assertEquals(Optional.empty(), Prefill.of(session.state()).fitting());
    }
}
