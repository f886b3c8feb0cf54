package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * A setting that turned out wrong is struck out wherever its fault is, and nothing is worked out anew behind anyone's
 * back.
 */
class WrongSettingSessionTest {

    private static final int BORE = 13;

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @Test
    void aSenseToldWrongTakesTheReadingsOfEveryRunAlongTheClosedOnesToo() throws Exception {
        RunSession closed = workshop.atTheBore("014", "0.012", "0.013", "0.011");
        closed.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        RunSession another = workshop.atTheBore("015", "0.010");
        RunSession here = workshop.atTheBore("016", "0.012", "0.013");
        Entry wrong = setting(here);
        List<Withdrawn> all = here.gauge().sharing(wrong, SettingFault.SENSE);
        assertEquals(
                List.of(here.id() + " 2", closed.id() + " 3", another.id() + " 1"),
                all.stream().map(gone -> gone.run() + " " + gone.readings()).toList());

        assertEquals(
                Optional.empty(),
                here.gauge()
                        .strikeOut(wrong, SettingFault.SENSE, "number goes the other way")
                        .objection());
        for (RunSession run : List.of(closed, another, here)) {
            RunSession opened = workshop.shop.open(run.id());
            Pass pass = opened.state().sheet().line(BORE).passes().get(0);
            assertTrue(pass.standing().isEmpty(), run.id());
            assertTrue(
                    pass.readings().stream()
                            .allMatch(reading ->
                                    reading.struck().orElseThrow().reason().equals("number goes the other way")),
                    run.id());
            assertEquals(
                    VerdictKind.OPEN,
                    opened.state().sheet().line(BORE).finding().verdict().standing());
            assertEquals(Optional.empty(), opened.state().sheet().run().gauges().setting(BORE));
        }
    }

    @Test
    void aSenseStruckOutIsAskedAnewAndTheBoreIsNotMirroredAnyMore() throws Exception {
        RunSession here = workshop.atTheBore("016", "0.012");
        here.gauge().strikeOut(setting(here), SettingFault.SENSE, "number goes the other way");
        assertInstanceOf(Prompt.WhichSense.class, here.state().asked());
        here.gauge().tellSense(true);
        here.enter("30.000");
        here.enter("0");
        assertFalse(((Prompt.SenseInFigures) here.state().asked()).otherwiseSoFar());
        here.gauge().confirmSense(true);
        here.enter("-0.012");
        // 30.000 − (−0.012 − 0)
        assertEquals(
                Optional.of(mm("30.012").length()),
                ((SizeFinding) here.state().line().finding())
                        .measured().stream().map(measured -> measured.value()).findFirst());
        RunSession later = workshop.setUp("017");
        later.goTo(BORE);
        assertTrue(later.state().asked().asLyingReady().isPresent());
    }

    @Test
    void aSenseToldBeforeTheOneStruckOutIsNotBelievedAgainByItself() throws Exception {
        RunSession here = workshop.atTheBore("014", "0.012");
        here.gauge().setAnew(true);
        here.gauge().tellSense(true);
        here.enter("30.000");
        here.enter("");
        here.gauge().confirmSense(true);
        here.enter("-0.012");
        here.gauge().strikeOut(setting(here), SettingFault.SENSE, "number goes the other way");
        assertInstanceOf(Prompt.WhichSense.class, here.state().asked());
        assertEquals(1, here.state().pass().standing().size());
    }

    @Test
    void aSenseOfAnotherGaugeOrTheRightSenseStays() throws Exception {
        RunSession other = workshop.setUp("014");
        other.goTo(BORE);
        other.gauge().choose("BG-9");
        other.gauge().tellSense(false);
        other.enter("30.000");
        other.enter("");
        other.gauge().confirmSense(true);
        RunSession here = workshop.atTheBore("015", "0.012");
        here.gauge().strikeOut(setting(here), SettingFault.SENSE, "number goes the other way");
        assertTrue(workshop.shop
                .open(other.id())
                .state()
                .sheet()
                .run()
                .gauges()
                .setting(BORE)
                .isPresent());
        RunSession later = workshop.setUp("016");
        later.goTo(BORE);
        later.gauge().choose("BG-9");
        assertTrue(later.state().asked().asLyingReady().isPresent());
    }

    @Test
    void aWrongMasterTakesEverySettingOnItAlongAndNoneOnAnotherSize() throws Exception {
        RunSession same = workshop.atTheBore("014", "0.012");
        RunSession otherSize = workshop.atTheBore("015", "0.012");
        otherSize.gauge().setAnew(false);
        otherSize.enter("30.004");
        otherSize.enter("0");
        otherSize.enter("0.011");
        RunSession here = workshop.atTheBore("016", "0.012");
        here.gauge().choose("BG-9");
        here.gauge().tellSense(true);
        here.enter("30.0000");
        here.enter("0");
        here.gauge().confirmSense(true);
        here.enter("-0.012");
        List<Withdrawn> all = here.gauge().sharing(setting(here), SettingFault.REFERENCE);
        assertEquals(
                List.of(here.id() + " 1", here.id() + " 1", same.id() + " 1", otherSize.id() + " 1"),
                all.stream().map(gone -> gone.run() + " " + gone.readings()).toList());
        here.gauge().strikeOut(setting(here), SettingFault.REFERENCE, "ring of another size");
        assertEquals(
                1,
                workshop.shop
                        .open(otherSize.id())
                        .state()
                        .sheet()
                        .line(BORE)
                        .passes()
                        .get(0)
                        .standing()
                        .size());
        assertInstanceOf(Prompt.Certified.class, here.state().asked());
        assertEquals(
                "30.000", ((Prompt.Certified) here.state().asked()).nominal().text());
    }

    @Test
    void aWrongZeroTakesItsOwnReadingsAlongAndNoOther() throws Exception {
        RunSession other = workshop.atTheBore("014", "0.012");
        RunSession here = workshop.atTheBore("015", "0.012");
        here.gauge().setAnew(false);
        here.enter("");
        here.enter("0.03");
        here.enter("0.043");
        Entry wrong = setting(here);
        assertEquals(
                List.of(new Withdrawn(here.id(), wrong.seq(), BORE, 1)),
                here.gauge().sharing(wrong, SettingFault.ZERO));
        here.gauge().strikeOut(wrong, SettingFault.ZERO, "dial had slipped");
        assertEquals(
                List.of(false, true),
                here.state().line().passes().get(0).readings().stream()
                        .map(reading -> reading.struck().isPresent())
                        .toList());
        assertEquals(
                1,
                workshop.shop
                        .open(other.id())
                        .state()
                        .sheet()
                        .line(BORE)
                        .passes()
                        .get(0)
                        .standing()
                        .size());
    }

    @Test
    void wrongWiresTakeTheReadingsOverThemAlong() throws Exception {
        RunSession here = workshop.atTheBore("015", "0.012", "0.012", "0.011", "0.011");
        Workshop.toTheThread(here);
        here.enter("3.620");
        here.enter("40.749");
        Entry wires = setting(here);
        assertEquals(
                1, here.gauge().sharing(wires, SettingFault.REFERENCE).get(0).readings());
        here.gauge().strikeOut(wires, SettingFault.REFERENCE, "wires of another set");
        assertInstanceOf(Prompt.Certified.class, here.state().asked());
        assertTrue(here.state().pass().standing().isEmpty());
        assertEquals(
                VerdictKind.PASS,
                here.state().sheet().line(BORE).finding().verdict().standing());
    }

    @Test
    void aClosedRunCanHaveItsOwnSettingStruckOut() throws Exception {
        RunSession here = workshop.atTheBore("014", "0.012");
        here.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        assertEquals(
                Optional.empty(),
                here.gauge()
                        .strikeOut(setting(here), SettingFault.ZERO, "dial had slipped")
                        .objection());
        assertTrue(here.state().sheet().line(BORE).passes().get(0).standing().isEmpty());
    }

    @Test
    void aSettingIsStruckOutOnceWithAReasonAndItsReadingsNotAgain() throws Exception {
        RunSession here = workshop.atTheBore("014", "0.012");
        Entry wrong = setting(here);
        long reading = here.state().pass().readings().get(0).entry().seq();
        assertEquals(
                Objection.Kind.BLANK,
                here.gauge()
                        .strikeOut(wrong, SettingFault.ZERO, " ")
                        .objection()
                        .orElseThrow()
                        .kind());
        here.gauge().strikeOut(wrong, SettingFault.ZERO, "dial had slipped");
        assertEquals(
                Objection.Kind.ALREADY_STRUCK,
                here.gauge()
                        .strikeOut(wrong, SettingFault.ZERO, "again")
                        .objection()
                        .orElseThrow()
                        .kind());
        assertEquals(
                Objection.Kind.ALREADY_STRUCK,
                here.strikeOut(reading, "misread").objection().orElseThrow().kind());
    }

    private static Entry setting(RunSession session) {
        List<Entry> settings = session.state().sheet().run().gauges().settings().stream()
                .filter(entry -> ((StepEvent.GaugeSet) entry.event()).step()
                        == session.state().inHand().number())
                .toList();
        return settings.get(settings.size() - 1);
    }

    private static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }
}
