package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.with;
import static org.tenthwise.model.record.ProposedCuts.bore;
import static org.tenthwise.model.record.ProposedCuts.cut;
import static org.tenthwise.model.record.ProposedCuts.known;
import static org.tenthwise.model.record.ProposedCuts.refused;
import static org.tenthwise.model.record.ProposedCuts.size;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;

/** A cut as it is typed: in whose figures, to which aim, by which steps. By hand from the limits beside it. */
class ProposalForTheRegisterTest {

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
                .did(new ShopEvent.MachineKnown("another", Register.DIAMETER, Aim.ByLimits.MIDDLE))
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
}
