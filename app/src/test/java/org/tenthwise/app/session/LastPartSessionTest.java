package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Proxy;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.history.LastPart;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Message;

/** The part before beside the run in hand: told apart from it, and never of what was struck out since. */
class LastPartSessionTest extends RunBegun {

    private static final Plan BORES = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "bore"
            name = "Bore"
            method = "Two ways."
            lower = 20.000
            upper = 20.021
            places = ["0°"]
            gauge_kind = "bore-gauge"
            gauge = "BG-1"
            master = 20.000

            [[step]]
            number = 2
            operation = 10
            kind = "diameter"
            name = "Collar"
            method = "Across."
            lower = 39.900
            upper = 40.000
            places = ["0°"]
            gauge_kind = "micrometer"
            gauge = "MC-1"
            """);

    private RunSession later;

    LastPartSessionTest() {
        super(BORES);
    }

    @BeforeEach
    void theBoreOfThePartBefore() throws Exception {
        session.gauge().tellSense(false);
        enter("20.000", "0");
        session.gauge().confirmSense(true);
        enter("0.010");
        assertEquals(VerdictKind.PASS, standing());
        later = begun("2");
    }

    private RunSession begun(String serial) throws Exception {
        return new Runs(ledger, Clock.systemUTC()).begin(new RunHeader(BORES, serial, "", "", "Setter 3"));
    }

    private static Optional<LastPart> partBefore(RunSession run) {
        return run.state().lastPart();
    }

    @Test
    void itIsThatOfTheStepInHandAndNoReadingOfThisRun() throws Exception {
        assertEquals("1", partBefore(later).orElseThrow().run().serial());
        assertTrue(later.state().pass().isEmpty());
        assertEquals(VerdictKind.OPEN, later.state().line().finding().verdict().standing());
        later.goTo(2);
        assertEquals(Optional.empty(), partBefore(later), "the collar was not measured there");
    }

    @Test
    void theRunItselfIsNotIts() {
        assertEquals(Optional.empty(), partBefore(session));
    }

    @Test
    void aSettingFoundWrongInThisRunTakesTheSizesOfThePartBeforeWithIt() throws Exception {
        assertTrue(partBefore(later).isPresent());
        later.gauge().setOtherwise(false);
        assertEquals(Optional.empty(), later.enter("20.000").objection());
        assertEquals(Optional.empty(), later.enter("0").objection());
        Entry setting = later.state().settingsHere().get(0);
        assertEquals(
                Optional.empty(),
                later.gauge()
                        .strikeOut(setting, SettingFault.REFERENCE, "Certified size mistyped")
                        .objection());
        assertEquals(Optional.empty(), partBefore(later), "what was read there counts no more");
    }

    @Test
    void ofAClosedRunNothingIsToldThatWasMeasuredAfterIt() throws Exception {
        RunSession before = later;
        before.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        RunSession third = begun("3");
        third.gauge().setOtherwise(false);
        third.enter("20.000");
        third.enter("0");
        third.enter("0.012");
        assertEquals(
                "1",
                partBefore(new Runs(ledger, Clock.systemUTC()).open(before.id()))
                        .orElseThrow()
                        .run()
                        .serial());
        assertEquals("3", partBefore(begun("4")).orElseThrow().run().serial());
    }

    @Test
    void aReadingIsTakenThoughThePartBeforeCannotBeReadAndNothingIsTold() throws Exception {
        AtomicBoolean unreadable = new AtomicBoolean();
        Ledger failing = (Ledger) Proxy.newProxyInstance(
                Ledger.class.getClassLoader(), new Class<?>[] {Ledger.class}, (proxy, method, given) -> {
                    if (unreadable.get() && method.getName().equals("history")) {
                        throw new CouldNotRead(Message.of("as-said", "the disk is gone"));
                    }
                    return method.invoke(ledger, given);
                });
        RunSession run = new Runs(failing, Clock.systemUTC()).begin(new RunHeader(BORES, "5", "", "", "Setter 3"));
        unreadable.set(true);
        assertEquals(Optional.empty(), partBefore(run));
        assertEquals(Optional.empty(), run.enter("20.000").objection());
        assertEquals(Optional.empty(), run.enter("0").objection());
        assertEquals(Optional.empty(), run.enter("0.010").objection());
        assertEquals(VerdictKind.PASS, run.state().line().finding().verdict().standing());
    }
}
