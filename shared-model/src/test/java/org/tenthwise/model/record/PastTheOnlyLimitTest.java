package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.with;
import static org.tenthwise.model.record.ProposedCuts.cut;
import static org.tenthwise.model.record.ProposedCuts.known;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.converter.ConvertWith;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.FeatureNamed;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * A size with one limit is never brought to the limit itself: read again, half of such work would be rejected. By hand
 * from the figures beside it.
 */
class PastTheOnlyLimitTest {

    private static final EvenCut NO_AIM = new EvenCut.NoCut(EvenCut.Reason.NO_AIM, Optional.empty());

    private static SizeCheck size(Feature feature, Limits limits, String guard, int places, Optional<String> aim) {
        return new SizeCheck(
                feature,
                limits,
                places(places),
                1,
                Combine.EACH,
                true,
                mm(guard),
                with(GaugeKind.INSIDE_MICROMETER),
                new Cutting(aim.map(size -> new Aim.Size(mm(size))), Optional.empty(), Optional.empty()),
                Optional.empty(),
                Contact.SQUARE);
    }

    private static Limits only(Feature feature, String limit) {
        return feature.isOutside() ? Limits.atMost(mm(limit)) : new Limits(Optional.of(mm(limit)), Optional.empty());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # feature, limit, guard, read
        DEPTH,    12.0,   0,     11.9
        DEPTH,    12.0,   0.05,  12.02
        BORE,     30.00,  0,     29.90
        DIAMETER, 30.00,  0,     30.20
        DIAMETER, 30.00,  0.02,  29.99
        """)
    void whereThePlanNamesNoAimNoFigureIsGiven(
            @ConvertWith(FeatureNamed.class) Feature feature, String limit, String guard, String read) {
        SizeCheck check = size(feature, only(feature, limit), guard, 1, Optional.empty());
        Bench bench = new Bench().step(check).read(1, read);
        assertEquals(NO_AIM, cut(bench));
        assertEquals(
                Proposal.Way.PAST_THE_LIMIT,
                bench.finding(1).proposal().orElseThrow().way(check, Optional.empty()));
    }

    /** What is usual on the machine is said of two limits: the middle and the third of one are the limit. */
    @Test
    void whatIsUsualOnTheMachineIsNoAimOfOneLimit() {
        for (Aim.ByLimits usual : Aim.ByLimits.values()) {
            SizeCheck check = size(Feature.DEPTH, only(Feature.DEPTH, "12.0"), "0", 1, Optional.empty());
            Bench bench = new Bench().step(check);
            bench.did(known(Register.DIAMETER, usual));
            assertEquals(NO_AIM, cut(bench.read(1, "11.9")));
        }
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # feature, limit, aim,  first, second, change
        DEPTH,    12.0,   12.3, 11.9,  12.2,   0.4
        DEPTH,    12.0,   12.3, 12.2,  11.9,   0.4
        BORE,     30.00,  30.1, 29.9,  29.95,  0.2
        DIAMETER, 30.00,  29.8, 30.2,  29.9,   -0.4
        """)
    void thePlaceWithMostMetalIsBroughtToTheAimOfThePlan(
            @ConvertWith(FeatureNamed.class) Feature feature,
            String limit,
            String aim,
            String first,
            String second,
            String change) {
        SizeCheck check = size(feature, only(feature, limit), "0", 2, Optional.of(aim));
        assertEquals(
                new EvenCut.Offered(length(aim), length(change)),
                cut(new Bench().step(check).read(1, first, second)));
    }

    /** The other limit alone lets nothing be cut again: past it no metal is left. */
    @Test
    void pastTheLimitWhereMetalIsGoneNothingIsCut() {
        SizeCheck depth = size(Feature.DEPTH, Limits.atMost(mm("12.0")), "0", 1, Optional.empty());
        Finding found = new Bench().step(depth).read(1, "12.1").finding(1);
        assertEquals(VerdictKind.FAIL, found.verdict().standing());
        assertEquals(Optional.empty(), found.proposal());
    }

    @Test
    void noCutThatIsOfferedEndsOnTheOnlyLimit() {
        Random random = new Random(5);
        for (int i = 0; i < 2_000; i++) {
            Feature feature = random.nextBoolean() ? Feature.DEPTH : Feature.BORE;
            String limit = "%d.%02d".formatted(10 + random.nextInt(20), random.nextInt(100));
            String read = "%d.%02d".formatted(10 + random.nextInt(20), random.nextInt(100));
            String aim = length(limit).plus(length("0.1")).in(Unit.MILLIMETRE).toPlainString();
            SizeCheck check =
                    size(feature, only(feature, limit), "0", 1, Optional.of(aim).filter(any -> random.nextBoolean()));
            Optional<Proposal> proposal =
                    new Bench().step(check).read(1, read).finding(1).proposal();
            proposal.flatMap(Proposal::change)
                    .ifPresent(
                            change -> assertTrue(length(read).plus(change).isAbove(length(limit)), read + " " + limit));
        }
    }
}
