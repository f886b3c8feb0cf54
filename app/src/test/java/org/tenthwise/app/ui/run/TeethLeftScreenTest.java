package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.Objection;
import org.tenthwise.app.session.Reply;
import org.tenthwise.app.text.Advice;
import org.tenthwise.app.ui.run.RunScreenState.Act;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.verdict.VerdictKind;

/** Teeth over pins, between them and by a span, with metal left and with too little of it; invented. */
class TeethLeftScreenTest extends RunAtHand {

    private static final String TEETH =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "worked"
            name = "Teeth"
            method = "As the sheet says."
            by = "over-pins"
            teeth = 24
            module = 2
            pressure_angle = 30
            pin = 4
            side = "external"
            lower = 54.150
            upper = 54.250
            places = ["one", "turned a quarter"]
            gauge_kind = "micrometer"
            gauge = "G-1"
            """;

    private static final String BETWEEN = TEETH.replace("external", "internal")
            .replace("pin = 4", "pin = 3.5")
            .replace("54.150", "44.000")
            .replace("54.250", "44.100");

    private static final String SPAN = TEETH.replace("\"over-pins\"", "\"span\"")
            .replace("pressure_angle = 30", "pressure_angle = 20")
            .replace("pin = 4", "over = 3")
            .replace("side = \"external\"\n", "")
            .replace("54.150", "15.40")
            .replace("54.250", "15.45");

    private Finding read(String plan, String... readings) throws Exception {
        beginARunOf(InventedPlans.inMillimetres(plan));
        for (String reading : readings) {
            run.session.keep(reading);
        }
        return run.session.state().line().finding();
    }

    private String todo() {
        return new Advice(words).next(run.session.state().line());
    }

    /** Thick teeth lift the pins: over them too much is metal left, between them too little is. */
    @ParameterizedTest
    @CsvSource({
        "over,54.300,54.290,CUT_AGAIN",
        "over,54.100,54.120,FAIL",
        "over,54.300,54.100,FAIL",
        "over,54.200,54.180,PASS",
        "between,43.950,43.960,CUT_AGAIN",
        "between,44.150,44.140,FAIL",
        "between,44.050,44.060,PASS",
        "span,15.50,15.49,CUT_AGAIN",
        "span,15.35,15.36,FAIL"
    })
    void metalIsLeftWhereTheTeethAreTooThick(String how, String one, String other, VerdictKind standing)
            throws Exception {
        String plan = how.equals("over") ? TEETH : how.equals("between") ? BETWEEN : SPAN;
        assertEquals(standing, read(plan, one, other).verdict().standing());
    }

    /** Nobody cuts round all places on what one of them reads, and nobody signs for it. */
    @Test
    void withAPlaceUnreadItStaysOpenAndCannotBeCut() throws Exception {
        assertEquals(VerdictKind.OPEN, read(TEETH, "54.300").verdict().standing());
        assertTrue(!run.session.state().mayCut());
        assertEquals(Objection.Kind.TEETH_UNREAD, refused(run.session.again(Why.CUT)));
        assertEquals(Objection.Kind.NOT_ASKED_HERE, refused(run.session.cutOnThese("The other is as thick.")));
    }

    private static Objection.Kind refused(Reply reply) {
        return reply.objection().orElseThrow().kind();
    }

    /**
     * 54.300 must lose 0.050 at least, 54.290 can lose 0.140 at the most. By hand: db = 48 cos 30° = 41.569, cos A =
     * 41.569 / 50.250, dM/ds = 41.569 / (48 sin A) = 1.54, so 0.0324 and 0.0908 off the teeth (Machinery's Handbook,
     * checking gear size by measurement over pins, from memory); rounded into the limits.
     */
    @Test
    void whatIsLeftIsSaidAsItIsReadAndOnTheTeeth() throws Exception {
        read(TEETH, "54.300", "54.290");
        assertEquals(
                "0.050 mm to 0.140 mm still to come off over the pins: 0.033 mm to 0.090 mm off the tooth thickness."
                        + " That is not the infeed.",
                todo());
        assertEquals(Act.CUT_TAKEN, atOnce().commitProperty().get().act());
        seen("run", "teeth-left", this::screen);
    }

    /**
     * By hand, as above: 0.002 over the pins is 0.0013 off the teeth, 0.003 is 0.00195. Into whole thousandths that
     * would be from 0.002 down to 0.001.
     */
    @Test
    void theLeastNeverStandsAboveTheMost() throws Exception {
        read(TEETH, "54.252", "54.153");
        assertEquals(
                "0.002 mm to 0.003 mm still to come off over the pins: 0.0013 mm to 0.0019 mm off the tooth thickness."
                        + " That is not the infeed.",
                todo());
    }

    @Test
    void whereLeastAndMostAreTheSameOneFigureIsSaid() throws Exception {
        read(TEETH, "54.252", "54.152");
        assertEquals(
                "0.002 mm still to come off over the pins: 0.001 mm off the tooth thickness. That is not the infeed.",
                todo());
    }

    @Test
    void betweenThePinsItOpens() throws Exception {
        read(BETWEEN, "43.950", "43.960");
        assertTrue(todo().startsWith("0.050 mm to 0.140 mm still to open between the pins: "), todo());
    }

    /** The key for it is no cut: it is measured again, and signed for where it stays so. */
    @Test
    void placesFurtherApartThanTheToleranceAreBroughtInByNoCut() throws Exception {
        read(TEETH, "54.400", "54.255");
        assertTrue(todo().startsWith("Metal is left, yet the places lie too far apart"), todo());
        assertEquals(Act.READ_AGAIN, atOnce().commitProperty().get().act());
        seen("run", "teeth-uneven", this::screen);
        run.session.again(Why.MEASURED_AGAIN);
        run.session.keep("54.400");
        run.session.keep("54.255");
        assertEquals(Act.DISPOSE, atOnce().commitProperty().get().act());
    }
}
