package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.DemoPlans;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Proposal;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/**
 * No cut before everything of a size is read, unless someone signs for it; the register is asked once a machine.
 * Outside Ø48 of four readings.
 */
class CuttingSessionTest {

    private static final int OUTSIDE = 9;
    private static final String REASON = "tail end is behind the live centre";

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunSession session;

    @BeforeEach
    void openTheShop() throws Exception {
        session = workshop.setUp(DemoPlans.outsideAsRead(), "014");
        session.goTo(OUTSIDE);
    }

    private void read(String... figures) throws Exception {
        for (String figure : figures) {
            assertEquals(Optional.empty(), session.enter(figure).objection());
        }
    }

    private long kept() {
        return session.state().sheet().run().entries().size();
    }

    @Test
    void noCutIsTakenBeforeTheLastPlaceIsRead() throws Exception {
        read("48.032", "48.030", "48.031");
        long before = kept();
        assertEquals(
                Objection.Kind.PLACES_UNREAD,
                session.again(Why.CUT).objection().orElseThrow().kind());
        assertEquals(before, kept());
        assertFalse(session.state().mayCut());
        session.enter("48.032");
        assertTrue(session.state().mayCut());
        assertEquals(Optional.empty(), session.again(Why.CUT).objection());
    }

    @Test
    void measuringAgainNeedsNoPlaceRead() throws Exception {
        read("48.032");
        assertEquals(Optional.empty(), session.again(Why.MEASURED_AGAIN).objection());
    }

    @Test
    void whereNothingIsReadNobodySignsForACut() throws Exception {
        assertFalse(session.state().mayCutOnThese());
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                session.cutOnThese(REASON).objection().orElseThrow().kind());
    }

    @Test
    void oneMayCutOnWhatIsReadSoFarWithAReason() throws Exception {
        read("48.032");
        assertTrue(session.state().mayCutOnThese());
        assertEquals(
                Objection.Kind.BLANK,
                session.cutOnThese(" ").objection().orElseThrow().kind());
        assertEquals(
                Objection.Kind.HIDDEN_SIGN,
                session.cutOnThese("tail\u200Bend").objection().orElseThrow().kind());
        assertEquals(Optional.empty(), session.cutOnThese("  " + REASON).objection());
        assertTrue(session.state().mayCut());
        assertEquals(3, proposal().unread().size());
    }

    @Test
    void toSignOnceForTheSameReadingsIsEnough() throws Exception {
        read("48.032");
        session.cutOnThese(REASON);
        long before = kept();
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                session.cutOnThese(REASON).objection().orElseThrow().kind());
        assertEquals(before, kept());
    }

    @Test
    void aSecondTapOnCutTakenBeginsNoFurtherPass() throws Exception {
        read("48.032");
        session.cutOnThese(REASON);
        session.again(Why.CUT);
        long before = kept();
        assertEquals(
                Objection.Kind.NOTHING_ASKED,
                session.again(Why.CUT).objection().orElseThrow().kind());
        assertEquals(before, kept());
    }

    @Test
    void whatIsReadOrStruckOutAfterItMakesItLapse() throws Exception {
        session.machine(Register.DIAMETER, Aim.ByLimits.MIDDLE);
        read("48.032");
        session.cutOnThese(REASON);
        read("48.030");
        assertFalse(session.state().mayCut());
        assertEquals(
                Objection.Kind.PLACES_UNREAD,
                session.again(Why.CUT).objection().orElseThrow().kind());
        session.cutOnThese(REASON);
        session.strikeOut(session.state().pass().readings().get(1).entry().seq(), "slipped");
        assertFalse(session.state().mayCut());
    }

    @Test
    void nobodySignsForACutPastSizeOrWhereNothingIsMissing() throws Exception {
        read("47.950");
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                session.cutOnThese(REASON).objection().orElseThrow().kind());
        session.again(Why.MEASURED_AGAIN);
        read("48.032", "48.030", "48.031", "48.032");
        assertFalse(session.state().mayCutOnThese());
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                session.cutOnThese(REASON).objection().orElseThrow().kind());
    }

    @Test
    void inAClosedRunThereIsNeitherCutNorMachine() throws Exception {
        read("48.032");
        session.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        assertEquals(
                Objection.Kind.CLOSED,
                session.cutOnThese(REASON).objection().orElseThrow().kind());
        assertEquals(
                Objection.Kind.CLOSED,
                session.machine(Register.RADIUS, Aim.ByLimits.MIDDLE)
                        .objection()
                        .orElseThrow()
                        .kind());
        assertFalse(session.state().mayCut() || session.state().mayCutOnThese());
    }

    @Test
    void aStepThatAHoldPointKeepsShutIsNotCut() throws Exception {
        RunSession held =
                workshop.shop.begin(new RunHeader(session.state().sheet().plan(), "015", "L-1", "Lathe 9", "Setter 1"));
        held.goTo(OUTSIDE);
        assertInstanceOf(Prompt.Held.class, held.state().asked());
        assertEquals(
                Objection.Kind.HELD,
                held.cutOnThese(REASON).objection().orElseThrow().kind());
        assertFalse(held.state().mayCut() || held.state().mayCutOnThese());
    }

    @Test
    void theRegisterIsAskedOnceThereIsACutToTypeAndNotBefore() throws Exception {
        read("48.032", "48.030", "48.031");
        assertInstanceOf(Prompt.Reading.class, session.state().asked());
        read("48.032");
        String machine = session.state().sheet().run().begun().machine();
        assertEquals(new Prompt.WhichRegister(machine), session.state().asked());
        assertEquals(Optional.empty(), proposal().offset());
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                session.enter("48.032").objection().orElseThrow().kind());
        // 47.990 − 48.031 = −0.041; by steps of 0.002 on diameter −0.040, the register shows half of it
        assertEquals(
                new Prompt.Nothing(),
                session.machine(Register.RADIUS, Aim.ByLimits.MIDDLE).state().asked());
        assertEquals(Optional.of(mm("-0.020")), proposal().offset());
    }

    /** Nobody will type that cut, and the figure of the next check is not kept waiting. */
    @Test
    void noRegisterIsAskedWhereTheSizeIsUsedAsItIs() throws Exception {
        read("48.032", "48.030", "48.031", "48.032");
        session.dispose(Disposition.USE_AS_IS, "fits", "Design office", "C-117");
        assertInstanceOf(Prompt.Nothing.class, session.state().asked());
        assertTrue(session.state().figureBeginsNext());
    }

    @Test
    void noRegisterIsAskedWhereNoCutIsOffered() throws Exception {
        read("48.032", "47.990", "48.031", "48.032");
        assertInstanceOf(Prompt.Nothing.class, session.state().asked());
    }

    @Test
    void whatIsSaidOfTheMachineTwiceIsKeptOnce() throws Exception {
        session.machine(Register.RADIUS, Aim.ByLimits.THIRD);
        long before = workshop.kept();
        session.machine(Register.RADIUS, Aim.ByLimits.THIRD);
        assertEquals(before, workshop.kept());
    }

    @Test
    void theNextRunOnTheMachineNeedNotAsk() throws Exception {
        session.machine(Register.RADIUS, Aim.ByLimits.THIRD);
        String machine = session.state().sheet().run().begun().machine();
        RunSession next =
                workshop.shop.begin(new RunHeader(session.state().sheet().plan(), "015", "L-1", machine, "Setter 2"));
        List<Event> events = next.state().sheet().run().entries().stream()
                .map(entry -> entry.event())
                .toList();
        assertEquals(
                List.of(new ShopEvent.MachineKnown(machine, Register.RADIUS, Aim.ByLimits.THIRD)),
                events.subList(1, events.size()));
        assertEquals(
                Optional.of(Register.RADIUS),
                workshop.shop.open(next.id()).state().sheet().run().register());
    }

    @Test
    void ofAnotherMachineNothingIsKnownByIt() throws Exception {
        session.machine(Register.RADIUS, Aim.ByLimits.THIRD);
        String machine = session.state().sheet().run().begun().machine();
        RunSession elsewhere = workshop.shop.begin(
                new RunHeader(session.state().sheet().plan(), "015", "L-1", machine + "b", "Setter 2"));
        assertEquals(Optional.empty(), elsewhere.state().sheet().run().register());
    }

    @Test
    void whatWasSaidWronglyOfAMachineIsSaidAnew() throws Exception {
        session.machine(Register.RADIUS, Aim.ByLimits.THIRD);
        session.machine(Register.DIAMETER, Aim.ByLimits.MIDDLE);
        assertEquals(
                Optional.of(Register.DIAMETER), session.state().sheet().run().register());
        String machine = session.state().sheet().run().begun().machine();
        RunSession next =
                workshop.shop.begin(new RunHeader(session.state().sheet().plan(), "015", "L-1", machine, "Setter 2"));
        assertEquals(Optional.of(Register.DIAMETER), next.state().sheet().run().register());
    }

    /** A figure for a register of diameters takes twice as much off where it counts radii. */
    @Test
    void aRegisterPutRightInOneRunIsRightInEveryOpenRunOnTheMachine() throws Exception {
        session.machine(Register.DIAMETER, Aim.ByLimits.THIRD);
        String machine = session.state().sheet().run().begun().machine();
        RunSession shut =
                workshop.shop.begin(new RunHeader(session.state().sheet().plan(), "015", "L-1", machine, "Setter 2"));
        shut.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        RunSession elsewhere = workshop.shop.begin(
                new RunHeader(session.state().sheet().plan(), "016", "L-1", machine + "b", "Setter 2"));
        elsewhere.machine(Register.DIAMETER, Aim.ByLimits.MIDDLE);
        RunSession next =
                workshop.shop.begin(new RunHeader(session.state().sheet().plan(), "017", "L-1", machine, "Setter 2"));
        next.machine(Register.RADIUS, Aim.ByLimits.MIDDLE);
        assertEquals(
                Optional.of(new ShopEvent.MachineKnown(machine, Register.RADIUS, Aim.ByLimits.THIRD)),
                workshop.shop.open(session.id()).state().sheet().run().machineKnown());
        assertEquals(
                Optional.of(Register.DIAMETER),
                workshop.shop.open(shut.id()).state().sheet().run().register());
        assertEquals(
                Optional.of(Register.DIAMETER),
                workshop.shop.open(elsewhere.id()).state().sheet().run().register());
        long before = workshop.kept();
        next.machine(Register.RADIUS, Aim.ByLimits.MIDDLE);
        assertEquals(before, workshop.kept());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  "})
    void aMachineWithoutANameIsKnownInItsRunAlone(String unnamed) throws Exception {
        RunSession first =
                workshop.shop.begin(new RunHeader(session.state().sheet().plan(), "015", "L-1", unnamed, "Setter 1"));
        first.machine(Register.RADIUS, Aim.ByLimits.MIDDLE);
        assertEquals(Optional.of(Register.RADIUS), first.state().sheet().run().register());
        RunSession next =
                workshop.shop.begin(new RunHeader(session.state().sheet().plan(), "016", "L-1", unnamed, "Setter 1"));
        assertEquals(Optional.empty(), next.state().sheet().run().register());
    }

    @Test
    void whatIsSaidOfTheMachineMakesNoSignatureAndNoDispositionLapse() throws Exception {
        read("48.032", "48.030", "48.031", "48.032");
        session.dispose(Disposition.USE_AS_IS, "fits", "Design office", "C-117");
        session.sign("Setter 1", SignedAs.MACHINED_AND_MEASURED);
        session.machine(Register.RADIUS, Aim.ByLimits.MIDDLE);
        assertTrue(session.state().line().disposed().isPresent());
        assertTrue(session.state().sheet().run().signatures().stream().noneMatch(signature -> signature.lapsed()));
    }

    private Proposal proposal() {
        return session.state().line().finding().proposal().orElseThrow();
    }

    private static Length mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE).length();
    }
}
