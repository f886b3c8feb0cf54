package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.SizeFinding;

/**
 * A gauge is set whole or not at all: what was begun is asked for again, and nothing is read under the gauge of before.
 */
class GaugeSessionTest {

    private static final int BORE = 13;
    private static final int PLUG = 14;
    private static final int THREAD = 21;

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunSession session;

    @BeforeEach
    void openTheShop() {
        session = workshop.setUp("014");
        session.goTo(BORE);
    }

    @Test
    void aBoreGaugeIsAskedForItsSenseOnceThenItsMasterThenItsZero() throws Exception {
        assertInstanceOf(Prompt.WhichSense.class, session.state().asked());
        session.gauge().tellSense(true);
        assertInstanceOf(Prompt.Certified.class, session.state().asked());
        session.enter("30.002");
        assertInstanceOf(Prompt.Zero.class, session.state().asked());
        session.enter("");
        session.gauge().confirmSense(true);
        assertEquals(
                ReadingDirection.FALLS_WITH_SIZE,
                session.state().setting().orElseThrow().gauge().sense().orElseThrow());
        session.readingsFirst(true);
        // 30.002 − (−0.013 − 0) = 30.015
        session.enter("-0.013");
        assertEquals(
                Optional.of(mm("30.015").length()),
                ((SizeFinding) session.state().line().finding()).value());

        RunSession another = workshop.setUp("015");
        another.goTo(BORE);
        Prompt.LiesReady ready = another.state().asked().asLyingReady().orElseThrow();
        assertEquals("30.002", ready.certified().text());
        assertEquals(Optional.of("014"), ready.part());
    }

    /** The plan knows the nominal alone: that is no certificate, and one tap must not make it one. */
    @Test
    void theSizeOnACertificateIsTypedOnceARunAndOfferedFromThenOn() throws Exception {
        session.gauge().tellSense(false);
        assertEquals(
                Objection.Kind.NOT_A_NUMBER,
                session.enter("").objection().orElseThrow().kind());
        assertEquals(Optional.empty(), ((Prompt.Certified) session.state().asked()).known());
        session.enter("30.002");
        session.enter("");
        session.gauge().confirmSense(true);
        session.gauge().setAnew(false);
        assertEquals(
                "30.002",
                ((Prompt.Certified) session.state().asked())
                        .known()
                        .orElseThrow()
                        .text());
        session.enter("");
        assertEquals(
                "30.002", ((Prompt.Zero) session.state().asked()).certified().text());
    }

    @Test
    void aMasterGoesByItsMarkWhereItHasOneAndByItsSizeOtherwise() throws Exception {
        session.gauge().tellSense(false);
        session.enter("30.000");
        session.enter("");
        session.gauge().confirmSense(true);
        assertEquals(
                Optional.of("30.000"), session.state().setting().orElseThrow().reference());
        session.gauge().choose("BG-2", Optional.of("MR-30"));
        session.enter("30.001");
        session.enter("0");
        assertEquals(
                Optional.of("MR-30"), session.state().setting().orElseThrow().reference());
    }

    @Test
    void aSenseToldIsPutIntoFiguresOfASmallerBoreBeforeAnythingIsRead() throws Exception {
        session.gauge().tellSense(true);
        session.enter("30.002");
        session.enter("0.03");
        // pressed in by a bore 0.010 smaller, a number that rises goes from 0.03 to 0.040
        assertEquals(
                new Prompt.SenseInFigures("BG-2", mm("0.040"), mm("29.992"), false, true),
                session.state().asked());
        assertEquals(Optional.empty(), session.state().setting());
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                session.enter("0.012").objection().orElseThrow().kind());
    }

    @Test
    void aFigureThatIsTheOtherWayRoundIsAskedOnceMoreAsItIsThen() throws Exception {
        session.gauge().tellSense(true);
        session.enter("30.002");
        session.enter("0.03");
        session.gauge().confirmSense(false);
        assertEquals(
                new Prompt.SenseInFigures("BG-2", mm("0.020"), mm("29.992"), false, true),
                session.state().asked());
        session.gauge().confirmSense(true);
        assertEquals(
                ReadingDirection.RISES_WITH_SIZE,
                session.state().setting().orElseThrow().gauge().sense().orElseThrow());
    }

    @Test
    void aSenseNotConfirmedIsNotKnownToTheShop() throws Exception {
        session.gauge().tellSense(true);
        session.enter("30.002");
        session.enter("0.03");
        RunSession another = workshop.setUp("015");
        another.goTo(BORE);
        assertInstanceOf(Prompt.WhichSense.class, another.state().asked());
    }

    @Test
    void whatWasTypedOfAGaugeIsNotAskedTwiceOnComingBackToTheStep() throws Exception {
        session.gauge().tellSense(true);
        session.enter("30.002");
        session.goTo(1);
        session.goTo(BORE);
        assertEquals(new Prompt.Zero(mm("30.002"), mm("0")), session.state().asked());
    }

    @Test
    void aGaugeHalfSetIsAskedForAgainOnComingBackAndNothingIsReadWithTheOneBefore() throws Exception {
        session = workshop.atTheBore("015", "0.013");
        session.gauge().choose("BG-9");
        session.gauge().tellSense(true);
        session.enter("30.001");
        session.goTo(1);
        session.goTo(BORE);
        assertInstanceOf(Prompt.Zero.class, session.state().asked());
        session.enter("0.000");
        session.gauge().confirmSense(true);
        session.enter("-0.012");
        assertEquals(
                "BG-9",
                session.state()
                        .pass()
                        .readings()
                        .get(1)
                        .setting()
                        .orElseThrow()
                        .gauge()
                        .id());
        // 30.001 − (−0.012) and not 30.000 + (−0.012)
        assertEquals(
                mm("30.013").length(),
                ((SizeFinding) session.state().line().finding())
                        .measured()
                        .get(1)
                        .value());
    }

    @Test
    void aGaugeTakenAndNotSetIsAskedForAgainWhenTheRunIsOpenedFromTheLedger() throws Exception {
        session = workshop.atTheBore("015", "0.013");
        session.gauge().choose("BG-9");
        session.gauge().tellSense(true);
        session.enter("30.001");
        RunSession opened = workshop.shop.open(session.id());
        opened.goTo(BORE);
        assertEquals(
                new Prompt.WhichSense("BG-9", GaugeKind.BORE_GAUGE),
                opened.state().asked());
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                opened.enter("0.012").objection().orElseThrow().kind());
    }

    @Test
    void aMicrometerTakenInPlaceOfAnotherReadsAtOnceAlsoAfterTheRunWasLeft() throws Exception {
        session = workshop.atTheBore("015", "0.013", "0.012", "0.014", "0.015");
        session.goTo(PLUG);
        session.gauge().choose("MC-77");
        RunSession opened = workshop.shop.open(session.id());
        opened.goTo(PLUG);
        opened.enter("29.990");
        assertEquals(
                "MC-77",
                opened.state()
                        .pass()
                        .readings()
                        .get(0)
                        .setting()
                        .orElseThrow()
                        .gauge()
                        .id());
    }

    @Test
    void wiresAreSetAsSoonAsTheirSizeIsTaken() throws Exception {
        session = workshop.atTheBore("015", "0.012", "0.012", "0.011", "0.011");
        Workshop.toTheThread(session);
        assertInstanceOf(Prompt.Certified.class, session.state().asked());
        session.enter("3.620");
        Setting wires = session.state().setting().orElseThrow();
        assertEquals(GaugeKind.MICROMETER_OVER_WIRES, wires.gauge().kind());
        assertEquals(
                wires,
                workshop.shop
                        .open(session.id())
                        .state()
                        .sheet()
                        .run()
                        .gauges()
                        .setting(THREAD)
                        .orElseThrow());
        assertTrue(session.state().pass().isEmpty());
    }

    @Test
    void aGaugeSetAnewIsAskedForItsMasterAndItsSenseOnlyWhereThatIsWanted() throws Exception {
        session = workshop.atTheBore("015", "0.013");
        session.gauge().setAnew(false);
        assertInstanceOf(Prompt.Certified.class, session.state().asked());
        session.enter("");
        session.enter("0.01");
        assertEquals(
                "0.01",
                session.state().setting().orElseThrow().zero().orElseThrow().text());
        session.gauge().setAnew(true);
        assertInstanceOf(Prompt.WhichSense.class, session.state().asked());
        session.gauge().tellSense(true);
        session.enter("30.000");
        session.enter("");
        assertTrue(((Prompt.SenseInFigures) session.state().asked()).otherwiseSoFar());
        assertEquals(
                ReadingDirection.RISES_WITH_SIZE,
                session.state()
                        .pass()
                        .readings()
                        .get(0)
                        .setting()
                        .orElseThrow()
                        .gauge()
                        .sense()
                        .orElseThrow());
    }

    @Test
    void anotherMasterOfTheSameNominalHasACertificateOfItsOwn() throws Exception {
        session = workshop.atTheBore("015", "0.013");
        session.gauge().choose("BG-2", Optional.of("RING-7"));
        assertEquals(
                new Prompt.Certified(GaugeKind.Reference.MASTER, "RING-7", mm("30.000"), Optional.empty()),
                session.state().asked());
        session.enter("30.004");
        session.enter("0");
        session.gauge().setAnew(false);
        assertEquals(
                new Prompt.Certified(GaugeKind.Reference.MASTER, "RING-7", mm("30.000"), Optional.of(mm("30.004"))),
                session.state().asked());
        session.gauge().choose("BG-9", Optional.of("RING-7"));
        session.gauge().tellSense(true);
        assertEquals(
                Optional.empty(),
                ((Prompt.Certified) session.state().asked()).known(),
                "of another gauge nothing is known");
    }

    @Test
    void aGaugeThatIsNotSetCannotBeSetAnew() throws Exception {
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                session.gauge().setAnew(true).objection().orElseThrow().kind());
    }

    private static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }
}
