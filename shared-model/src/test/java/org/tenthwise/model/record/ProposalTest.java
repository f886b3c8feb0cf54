package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.with;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.SizeModifier;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/** When a cut is proposed, how large, and in whose figures. By hand from the limits beside it. */
class ProposalTest {

    private static final StepEvent.CutOnThese SIGNED =
            new StepEvent.CutOnThese(1, "floor is behind a shoulder until it is cut");

    /** 29.854 at the mouth says + 0.1565; 29.990 at the floor, read last, would be 30.1465. */
    @Test
    void noCutIsProposedBeforeTheLastPlaceIsRead() {
        SizeCheck bore = bore(4, Combine.EACH, Optional.empty());
        for (int read = 1; read < 4; read++) {
            String[] figures = Arrays.copyOf(new String[] {"29.854", "29.900", "29.950"}, read);
            Finding found = new Bench().step(bore).read(1, figures).finding(1);
            assertEquals(VerdictKind.CUT_AGAIN, found.verdict().standing());
            assertEquals(Optional.empty(), found.proposal());
        }
        assertEquals(
                refused(EvenCut.Reason.UNEVEN, "0.031"),
                cut(new Bench().step(bore).read(1, "29.854", "29.900", "29.950", "29.990")));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # feature, lower, upper,  guard, first,  second, offered
        BORE,     30.000, 30.021, 0,     29.900, 29.950,          0.071
        WIDTH,    12.000, 12.043, 0,     12.010, 11.950,          0.033
        DIAMETER, 47.980, 48.000, 0.003, 48.004, 47.986,          0.003
        BORE,     20.000, 20.021, 0.002, 19.995, 20.016,          0.003
        BORE,     20.000, 20.021, 0.002, 19.990, 20.020,          0
        DIAMETER, 29.980, 30.000, 0,     30.012, 29.990,          0.010
        """)
    void whereNoEvenCutBringsBothPlacesInTheMostThatMayComeOffIsSaid(
            Feature feature, String lower, String upper, String guard, String first, String second, String safe) {
        assertEquals(
                refused(EvenCut.Reason.UNEVEN, safe),
                cut(new Bench()
                        .step(size(feature, lower, upper, guard, 2, Combine.EACH))
                        .read(1, first, second)));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # feature, lower, upper,  guard, first,  second, aim,     change
        BORE,     30.000, 30.020, 0,     29.960, 29.970, 30.010,  0.045
        BORE,     20.000, 20.021, 0.002, 19.995, 20.010, 20.0105, 0.008
        DIAMETER, 29.980, 30.000, 0,     30.010, 29.990, 29.990,  -0.010
        DEPTH,    10.000, 10.100, 0,     9.980,  9.990,  10.050,  0.065
        """)
    void theMiddleOfTheReadingsIsBroughtToTheMiddleOfTheLimits(
            Feature feature,
            String lower,
            String upper,
            String guard,
            String first,
            String second,
            String aim,
            String change) {
        assertEquals(
                new EvenCut.Offered(length(aim), length(change)),
                cut(new Bench()
                        .step(size(feature, lower, upper, guard, 2, Combine.EACH))
                        .read(1, first, second)));
    }

    /** 30.001 is inside 30.000 by less than the guard band of 0.003; 30.0105 − 30.001 = 0.0095, and a step is 0.001. */
    @Test
    void whatIsUnprovenWithMetalLeftHasACutProposedToo() {
        Bench bench = new Bench()
                .step(size(Feature.BORE, "30.000", "30.021", "0.003", 1, Combine.EACH))
                .read(1, "30.001");
        assertEquals(VerdictKind.UNPROVEN, bench.finding(1).verdict().standing());
        assertEquals(new EvenCut.Offered(length("30.0105"), length("0.009")), cut(bench));
    }

    /**
     * The mean, 30.001, is in the guard band with metal left; 30.022 is past size, which binds the work where the
     * drawing means each place.
     */
    @ParameterizedTest
    @CsvSource({"SA, true", ", false"})
    void aLightCutIsBoundByThePlacesUnlessTheDrawingMakesOneSizeOfThem(SizeModifier says, boolean cut) {
        SizeCheck bore = new SizeCheck(
                Feature.BORE,
                Limits.between(mm("30.000"), mm("30.021")),
                places(2),
                1,
                Combine.MEAN,
                true,
                mm("0.003"),
                with(GaugeKind.INSIDE_MICROMETER),
                Cutting.UNSAID,
                Optional.ofNullable(says),
                Contact.SQUARE);
        assertEquals(
                cut,
                new Bench()
                        .step(bore)
                        .read(1, "29.980", "30.022")
                        .finding(1)
                        .proposal()
                        .isPresent());
    }

    @Test
    void whatIsUnprovenOnTheOtherSideHasNone() {
        assertEquals(
                Optional.empty(),
                new Bench()
                        .step(size(Feature.BORE, "30.000", "30.021", "0.003", 1, Combine.EACH))
                        .read(1, "30.020")
                        .finding(1)
                        .proposal());
    }

    /**
     * Mean 90.060/6 = 15.010, 0.014 above 14.996; half-way between 15.000 and 15.060 would be 15.030 and ask for 0.034.
     */
    @Test
    void whereTheDrawingMeansTheAverageSizeThatIsBroughtIn() {
        SizeCheck turned = new SizeCheck(
                Feature.DIAMETER,
                Limits.between(mm("14.990"), mm("15.002")),
                places(6),
                1,
                Combine.MEAN,
                true,
                mm("0"),
                with(GaugeKind.MICROMETER),
                Cutting.UNSAID,
                Optional.of(SizeModifier.SA),
                Contact.SQUARE);
        assertEquals(
                new EvenCut.Offered(length("14.996"), length("-0.014")),
                cut(new Bench().step(turned).read(1, "15.000", "15.000", "15.000", "15.000", "15.000", "15.060")));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # combine, says, first,  second, verdict   bore 30.000 to 30.021
        MEAN,      SA,   29.900, 30.050, CUT_AGAIN
        MEAN,      ,     29.900, 30.050, FAIL
        SMALLEST,  SN,   29.980, 30.050, CUT_AGAIN
        SMALLEST,  ,     29.980, 30.050, FAIL
        LARGEST,   SX,   29.900, 30.010, PASS
        """)
    void onePlacePastSizeIsAFailUnlessTheDrawingMakesOneSizeOfAll(
            Combine combine, SizeModifier says, String first, String second, VerdictKind standing) {
        SizeFinding found = (SizeFinding) new Bench()
                .step(bore(2, combine, Optional.ofNullable(says)))
                .read(1, first, second)
                .finding(1);
        assertEquals(standing, found.verdict().standing());
        assertEquals(standing == VerdictKind.CUT_AGAIN, found.proposal().isPresent());
        assertEquals(standing == VerdictKind.FAIL, found.past().isPresent());
    }

    /** Smallest 29.980: + 0.0305 to the middle, by steps of 0.001; 30.010 would go to 30.040, and nothing binds it. */
    @Test
    void onlyTheSizeThatTheDrawingMeansIsBoundByTheLimits() {
        assertEquals(
                new EvenCut.Offered(length("30.0105"), length("0.030")),
                cut(new Bench()
                        .step(bore(2, Combine.SMALLEST, Optional.of(SizeModifier.SN)))
                        .read(1, "29.980", "30.010")));
        assertEquals(
                refused(EvenCut.Reason.UNEVEN, "0.011"),
                cut(new Bench()
                        .step(bore(2, Combine.SMALLEST, Optional.empty()))
                        .read(1, "29.980", "30.010")));
    }

    /** A two-point size binds at every place: 29.980 to the middle would be 0.0305, and 30.010 has 0.011 left. */
    @ParameterizedTest
    @CsvSource({"LP", ","})
    void twoPointSizesAreBoundAtEveryPlaceWhetherTheDrawingSaysSoOrNot(SizeModifier says) {
        assertEquals(
                refused(EvenCut.Reason.UNEVEN, "0.011"),
                cut(new Bench()
                        .step(bore(2, Combine.EACH, Optional.ofNullable(says)))
                        .read(1, "29.980", "30.010")));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # one place, another, nothing may come off   outside 47.980 to 48.000, guard band 0.003
        48.004, 47.983, true
        48.004, 47.984, false
        48.004, 48.004, false
        """)
    void nothingIsLeftWhereTheLeastPlaceStandsOnItsLimitLessTheGuardBand(String one, String another, boolean nothing) {
        Bench bench = new Bench()
                .step(size(Feature.DIAMETER, "47.980", "48.000", "0.003", 2, Combine.EACH))
                .read(1, one, another);
        assertEquals(nothing, bench.finding(1).proposal().orElseThrow().leavesNothing());
    }

    @Test
    void aRangeOfSizesIsBroughtInByNoCut() {
        Bench bench = new Bench()
                .step(size(Feature.DEPTH, "0.010", "0.020", "0", 2, Combine.RANGE))
                .read(1, "5.000", "5.004");
        assertEquals(VerdictKind.FAIL, bench.finding(1).verdict().standing());
        assertEquals(Optional.empty(), bench.finding(1).proposal());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # register, change, offset   29.8545 to 30.0105 is 0.156
        DIAMETER,   0.156,  0.156
        RADIUS,     0.156,  0.078
        """)
    void theOffsetIsWhatTheRegisterCounts(Register register, String change, String offset) {
        Bench bench = new Bench()
                .did(known(register, Aim.ByLimits.MIDDLE))
                .step(bore(1, Combine.EACH, Optional.empty()))
                .read(1, "29.8545");
        Proposal proposal = bench.finding(1).proposal().orElseThrow();
        assertEquals(Optional.of(length(change)), proposal.change());
        assertEquals(Optional.of(length(offset)), proposal.offset());
    }

    /** 0.1565 is wanted. A register in radii with a step of 0.001 moves the diameter by 0.002. */
    @Test
    void theCutIsRoundedToWhatCanBeTyped() {
        Bench bench = new Bench()
                .did(known(Register.RADIUS, Aim.ByLimits.MIDDLE))
                .step(bore(1, Combine.EACH, Optional.empty()))
                .read(1, "29.8535");
        assertEquals(Optional.of(length("0.156")), bench.finding(1).proposal().flatMap(Proposal::change));
        Cutting coarse = new Cutting(Optional.empty(), Optional.empty(), Optional.of(mm("0.005")));
        bench = new Bench()
                .did(known(Register.RADIUS, Aim.ByLimits.MIDDLE))
                .step(bore(coarse))
                .read(1, "29.8535");
        assertEquals(Optional.of(length("0.150")), bench.finding(1).proposal().flatMap(Proposal::change));
        assertEquals(
                Optional.of(length("0.155")),
                new Bench()
                        .step(bore(coarse))
                        .read(1, "29.8535")
                        .finding(1)
                        .proposal()
                        .flatMap(Proposal::change));
    }

    /** 1.4998 to 1.50055 is 0.00075 in; the step of a register in inches is 0.0001 in where the plan says none. */
    @Test
    void anInchPlanIsRoundedToATenthOfAThou() {
        Limits limits = Limits.between(new Written("1.5000", Unit.INCH), new Written("1.5011", Unit.INCH));
        SizeCheck bore = new SizeCheck(
                Feature.BORE,
                limits,
                places(1),
                1,
                Combine.EACH,
                true,
                new Written("0", Unit.INCH),
                with(GaugeKind.INSIDE_MICROMETER));
        Bench bench =
                new Bench().step(bore).did(new StepEvent.ReadingTaken(1, "1.1", new Written("1.4998", Unit.INCH)));
        assertEquals(
                Optional.of(new Written("0.0007", Unit.INCH).length()),
                bench.finding(1).proposal().flatMap(Proposal::change));
    }

    @Test
    void aWidthAndADepthAreInNoRegister() {
        Bench bench = new Bench()
                .did(known(Register.RADIUS, Aim.ByLimits.MIDDLE))
                .step(size(Feature.WIDTH, "12.000", "12.043", "0", 1, Combine.EACH))
                .read(1, "11.980");
        assertEquals(Optional.empty(), bench.finding(1).proposal().orElseThrow().offset());
        assertEquals(Optional.of(length("0.041")), bench.finding(1).proposal().flatMap(Proposal::change));
    }

    /** A third in from 30.000 is 30.007; 29.900 is 0.107 away, and 0.1105 from the middle. */
    @Test
    void theAimOfThePlanGoesBeforeTheUsualOneOfTheMachine() {
        Bench third = new Bench()
                .did(known(Register.DIAMETER, Aim.ByLimits.THIRD))
                .step(bore(1, Combine.EACH, Optional.empty()))
                .read(1, "29.900");
        assertEquals(new EvenCut.Offered(length("30.007"), length("0.107")), cut(third));
        Cutting middle = new Cutting(Optional.of(Aim.ByLimits.MIDDLE), Optional.empty(), Optional.empty());
        assertEquals(
                new EvenCut.Offered(length("30.0105"), length("0.110")),
                cut(new Bench()
                        .did(known(Register.DIAMETER, Aim.ByLimits.THIRD))
                        .step(bore(middle))
                        .read(1, "29.900")));
        Cutting atSize = new Cutting(Optional.of(new Aim.Size(mm("30.004"))), Optional.empty(), Optional.empty());
        assertEquals(
                new EvenCut.Offered(length("30.004"), length("0.104")),
                cut(new Bench().step(bore(atSize)).read(1, "29.900")));
    }

    @Test
    void whatIsSaidLastOfTheMachineCountsAndWhatIsSaidOfAnotherDoesNot() {
        Bench bench = new Bench()
                .did(known(Register.DIAMETER, Aim.ByLimits.MIDDLE))
                .did(known(Register.RADIUS, Aim.ByLimits.THIRD))
                .did(new Event.MachineKnown("another", Register.DIAMETER, Aim.ByLimits.MIDDLE))
                .step(bore(1, Combine.EACH, Optional.empty()))
                .read(1, "29.900");
        Proposal proposal = bench.finding(1).proposal().orElseThrow();
        assertEquals(Optional.of(Register.RADIUS), proposal.register());
        assertEquals(Optional.of(length("0.053")), proposal.offset());
    }

    /** 29.999 leaves 0.0115 on the diameter, 0.0055 deep by whole steps. */
    @ParameterizedTest
    @CsvSource({"0.0055, true", "0.0056, false"})
    void belowTheLeastCutNoAmountIsGiven(String least, boolean offered) {
        Cutting cutting = new Cutting(Optional.empty(), Optional.of(mm(least)), Optional.empty());
        assertEquals(
                offered
                        ? new EvenCut.Offered(length("30.0105"), length("0.011"))
                        : refused(EvenCut.Reason.BELOW_LEAST_CUT, "0.022"),
                cut(new Bench().step(bore(cutting)).read(1, "29.999")));
    }

    @Test
    void onWhatIsReadSoFarACutIsProposedOnceSomeoneSignedForIt() {
        Bench bench = new Bench()
                .step(bore(3, Combine.EACH, Optional.empty()))
                .read(1, "29.900", "29.906")
                .did(SIGNED);
        Proposal proposal = bench.finding(1).proposal().orElseThrow();
        assertEquals(new EvenCut.Offered(length("30.0105"), length("0.107")), proposal.cut());
        assertEquals(
                List.of("place 3"),
                proposal.unread().stream().map(slot -> slot.place().name()).toList());
        bench.did(new StepEvent.ReadingTaken(1, "3.1", mm("29.990")));
        assertEquals(refused(EvenCut.Reason.UNEVEN, "0.031"), cut(bench));
        assertEquals(List.of(), bench.finding(1).proposal().orElseThrow().unread());
    }

    @Test
    void aMeanIsProposedFromWhatIsReadOnceSomeoneSignedForIt() {
        Bench bench = new Bench()
                .step(bore(3, Combine.MEAN, Optional.of(SizeModifier.SA)))
                .read(1, "29.900", "29.910");
        assertEquals(Optional.empty(), bench.finding(1).proposal());
        assertEquals(new EvenCut.Offered(length("30.0105"), length("0.105")), cut(bench.did(SIGNED)));
        assertEquals(VerdictKind.OPEN, bench.finding(1).verdict().standing());
    }

    @ParameterizedTest
    @EnumSource(Unsigning.class)
    void whatIsSignedForLapsesWithAnyChangeOfTheStep(Unsigning change) {
        Bench bench = new Bench()
                .step(bore(3, Combine.EACH, Optional.empty()))
                .read(1, "29.900", "29.906")
                .did(SIGNED);
        bench.did(change.event);
        assertEquals(change.lapses, bench.finding(1).proposal().isEmpty());
        assertEquals(change.lapses, bench.sheet().line(1).pass().onThese().isEmpty());
    }

    /** Entry 2 is the first reading, entry 4 the signature. */
    private enum Unsigning {
        READ_ANEW(new StepEvent.ReadingTaken(1, "1.1", mm("29.901")), true),
        STRUCK(new Event.StruckOut(2, "slipped"), true),
        GAUGE(new StepEvent.GaugeChosen(1, "MC-2", Optional.empty()), true),
        SETTING(
                new StepEvent.GaugeSet(
                        1, Setting.direct(new Gauge("MC-2", GaugeKind.INSIDE_MICROMETER, Optional.empty()))),
                true),
        DISPOSED(new StepEvent.DispositionSigned(1, Disposition.SCRAP, "thin", "Inspector 1"), true),
        NOTE(new StepEvent.NoteMade(1, "cool"), false),
        ELSEWHERE(new StepEvent.ReadingTaken(2, "1.1", mm("29.901")), false),
        GAUGE_ELSEWHERE(new StepEvent.GaugeChosen(2, "MC-2", Optional.empty()), false),
        DISPOSED_ELSEWHERE(new StepEvent.DispositionSigned(2, Disposition.SCRAP, "thin", "Inspector 1"), false);

        private final Event event;
        private final boolean lapses;

        Unsigning(Event event, boolean lapses) {
            this.event = event;
            this.lapses = lapses;
        }
    }

    @Test
    void whatIsSignedForOnePassIsNotSignedForTheNext() {
        Bench bench = new Bench()
                .step(bore(2, Combine.EACH, Optional.empty()))
                .read(1, "29.900")
                .did(SIGNED)
                .did(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT))
                .read(1, "29.990");
        assertEquals(Optional.empty(), bench.finding(1).proposal());
        assertEquals(
                Optional.of(length("0.110")),
                bench.sheet().line(1).earlier().get(0).proposal().flatMap(Proposal::change));
    }

    /** Pitch diameters in 18.164 to 18.334: 18.634 needs 0.300 off, and from 18.330 no more than 0.166 may come. */
    @Test
    void aThreadIsBoundAtEveryPlaceToo() {
        ScrewThread vee = new ScrewThread(ThreadForm.METRIC, length("20"), length("2.5"), 1);
        Bench bench = new Bench()
                .step(Bench.wires(vee, "18.164", "18.334", Optional.empty(), 2))
                .did(new StepEvent.GaugeSet(1, Bench.wires("1.443")));
        MeasurementOverWires over = new MeasurementOverWires(vee, length("1.443"));
        bench.read(1, over.overWires(length("18.634")).millimetres().toPlainString());
        assertEquals(VerdictKind.CUT_AGAIN, bench.finding(1).verdict().standing());
        assertEquals(Optional.empty(), bench.finding(1).proposal());
        bench.did(new StepEvent.ReadingTaken(
                1, "2.1", mm(over.overWires(length("18.3295")).millimetres().toPlainString())));
        assertEquals(refused(EvenCut.Reason.UNEVEN, "0.165"), cut(bench));
    }

    private static EvenCut cut(Bench bench) {
        return bench.finding(1).proposal().orElseThrow().cut();
    }

    private static EvenCut refused(EvenCut.Reason reason, String safe) {
        return new EvenCut.NoCut(reason, Optional.of(length(safe)));
    }

    private static Event known(Register register, Aim.ByLimits usual) {
        return new Event.MachineKnown("", register, usual);
    }

    private static SizeCheck bore(int places, Combine combine, Optional<SizeModifier> says) {
        return new SizeCheck(
                Feature.BORE,
                Limits.between(mm("30.000"), mm("30.021")),
                places(places),
                1,
                combine,
                true,
                mm("0"),
                with(GaugeKind.INSIDE_MICROMETER),
                Cutting.UNSAID,
                says,
                Contact.SQUARE);
    }

    private static SizeCheck bore(Cutting cutting) {
        return new SizeCheck(
                Feature.BORE,
                Limits.between(mm("30.000"), mm("30.021")),
                places(1),
                1,
                Combine.EACH,
                true,
                mm("0"),
                with(GaugeKind.INSIDE_MICROMETER),
                cutting,
                Optional.empty(),
                Contact.SQUARE);
    }

    private static SizeCheck size(
            Feature feature, String lower, String upper, String guard, int places, Combine combine) {
        return new SizeCheck(
                feature,
                Limits.between(mm(lower), mm(upper)),
                places(places),
                1,
                combine,
                true,
                mm(guard),
                with(GaugeKind.INSIDE_MICROMETER));
    }
}
