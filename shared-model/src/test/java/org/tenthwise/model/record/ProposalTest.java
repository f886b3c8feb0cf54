package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.with;
import static org.tenthwise.model.record.ProposedCuts.bore;
import static org.tenthwise.model.record.ProposedCuts.cut;
import static org.tenthwise.model.record.ProposedCuts.refused;
import static org.tenthwise.model.record.ProposedCuts.size;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.converter.ConvertWith;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.FeatureNamed;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.SizeModifier;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/** When a cut is proposed, and how large. By hand from the limits beside it. */
class ProposalTest {

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
            @ConvertWith(FeatureNamed.class) Feature feature,
            String lower,
            String upper,
            String guard,
            String first,
            String second,
            String safe) {
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
            @ConvertWith(FeatureNamed.class) Feature feature,
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
        assertEquals(nothing, way(bench) == Proposal.Way.NONE);
    }

    /**
     * Wanted to the middle, 30.0105, are 0.0115 each time, 0.006 deep. Nobody knows what a spring pass takes, so it is
     * thought to be all but the least cut, 0.010 deep and 0.020 on diameter: the largest place has 30.021 less 30.001
     * for it, but not less 30.002. From 29.900 it was asked to take 0.110: of that stand 0.011, and up to the limit
     * there are 0.022.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # least cut, before a cut, one place, another, what is advised   bore 30.000 to 30.021
        0.010, ,       29.999, 29.999, SPRING_PASS
        0.010, ,       29.997, 30.001, SPRING_PASS
        0.010, ,       29.996, 30.002, NONE
        0.020, ,       29.999, 29.999, NONE
        0.020, 29.900, 29.999, 29.999, SPRING_PASS
        0.010, ,       29.980, 29.980, EVEN_CUT
        0.010, ,       29.980, 30.003, NONE
        0.010, ,       29.950, 30.001, AT_MOST
        """)
    void aSpringPassIsAdvisedOnlyWhereItCannotTakeThePlaceWithLeastMetalPastSize(
            String leastCut, String before, String one, String another, Proposal.Way way) {
        Bench bench = new Bench().step(boreCutWith(leastCut));
        if (before != null) {
            bench.read(1, before, before).did(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT));
        }
        assertEquals(way, way(bench.read(1, one, another)));
    }

    private static SizeCheck boreCutWith(String leastCut) {
        return new SizeCheck(
                Feature.BORE,
                Limits.between(mm("30.000"), mm("30.021")),
                places(2),
                1,
                Combine.EACH,
                true,
                mm("0"),
                with(GaugeKind.INSIDE_MICROMETER),
                new Cutting(Optional.empty(), Optional.of(mm(leastCut)), Optional.empty()),
                Optional.empty(),
                Contact.SQUARE);
    }

    private static Proposal.Way way(Bench bench) {
        Line line = bench.sheet().line(1);
        return line.finding()
                .proposal()
                .orElseThrow()
                .way(line.step().check().asSize().orElseThrow(), CutSoFar.last(line));
    }

    @Test
    void aRangeOfSizesIsBroughtInByNoCut() {
        Bench bench = new Bench()
                .step(size(Feature.DEPTH, "0.010", "0.020", "0", 2, Combine.RANGE))
                .read(1, "5.000", "5.004");
        assertEquals(VerdictKind.FAIL, bench.finding(1).verdict().standing());
        assertEquals(Optional.empty(), bench.finding(1).proposal());
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
}
