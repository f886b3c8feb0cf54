package org.tenthwise.app.ui.deed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.SignedAs;

/** The card of a gauge: how it is set, and what can be done about it. */
class GaugeFormTest {

    private static final int BORE = 13;
    private static final int PLUG = 14;

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @Test
    void theCardSaysHowTheGaugeIsSetAndOffersTheHarmlessFirst() {
        StepForm model = card(workshop.atTheBore("014", "0.013"));
        assertEquals(
                "BG-2 · dial goes up as the bore grows · set on ring 30.000 · dial at 0",
                model.card().getValue().orElseThrow().notes().get(0));
        assertEquals(
                List.of(
                        "Set ring and zero again",
                        "Enter direction, ring and zero again",
                        "Use another gauge",
                        "Certificate and due day of BG-2",
                        "Certificate and due day of master 30.000",
                        "Wrong direction: BG-2, dial goes up as the bore grows",
                        "Wrong ring: BG-2 on ring 30.000",
                        "Wrong zero: BG-2 with dial at 0"),
                offered(model));
    }

    @Test
    void onceItWasToldHowTheXOffsetCountsThatIsPutRightHere() throws Exception {
        RunSession session = workshop.atTheBore("014", "0.013");
        session.machine(Register.RADIUS, Aim.ByLimits.MIDDLE);
        StepForm model = card(session);
        assertEquals("Correct the machine: X offset on radius", offered(model).get(3));
        choose(model, 3);
        assertEquals(List.of("back", "form MACHINE " + session.id()), workshop.asked);
    }

    @Test
    void aClosedRunHasItsSettingsStruckOutAndNothingElse() throws Exception {
        RunSession session = workshop.atTheBore("014", "0.013");
        session.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        assertTrue(offered(card(session)).stream()
                .allMatch(row -> row.startsWith("Told wrong") || row.startsWith("Wrong")));
        assertEquals(3, offered(card(session)).size());
    }

    @Test
    void aMicrometerHasNoSenseNoMasterAndNoZeroToSetAnew() throws Exception {
        RunSession session = workshop.atTheBore("014", "0.012", "0.012", "0.011", "0.011");
        session.goTo(PLUG);
        session.enter("29.990");
        String mark = session.state().setting().orElseThrow().gauge().id();
        assertEquals(
                List.of("Use another gauge", "Certificate and due day of " + mark, "Gauge was off: " + mark),
                offered(card(session)));
    }

    @Test
    void settingItAnewLeadsBackToTheRunWhereTheMasterIsAsked() {
        RunSession session = workshop.atTheBore("014", "0.013");
        choose(card(session), 0);
        assertEquals(List.of("back"), workshop.asked);
        assertInstanceOf(Prompt.Certified.class, session.state().asked());
    }

    @Test
    void aWrongSettingIsStruckOutOnlyAfterWhatGoesWithItWasListed() throws Exception {
        RunSession other = workshop.atTheBore("014", "0.012", "0.014");
        RunSession session = workshop.atTheBore("015", "0.013");
        Entry setting = session.state().settingsHere().get(0);
        choose(card(session), 5);
        assertEquals(List.of("back", "wrong SENSE " + setting.seq() + " " + session.id()), workshop.asked);

        StepForm model =
                new WrongSettingForm(workshop.inHand(session), setting, SettingFault.SENSE, workshop.words, workshop);
        assertFalse(model.form().readyProperty().get());
        model.load();
        List<String> notes = model.card().getValue().orElseThrow().notes();
        assertTrue(
                notes.containsAll(List.of(session.id() + ", check 13: 1 read", other.id() + ", check 13: 2 read")),
                notes::toString);
        assertEquals("3 no longer count", model.form().aboutProperty().get());
        choose(model.form(), 0);
        assertTrue(session.state().pass().standing().isEmpty());

        Run opened = workshop.shop.open(other.id()).state().sheet().run();
        assertEquals(
                Optional.of("2 of the readings of check 13 no longer count: Dial goes the other way."),
                new GaugeWords(workshop.words).withdrawnLast(opened));
    }

    @Test
    void theRunSaysOfWhatNoLongerCountsUntilSomethingIsDoneInIt() throws Exception {
        RunSession session = workshop.atTheBore("014", "0.013");
        session.gauge().strikeOut(session.state().settingsHere().get(0), SettingFault.ZERO, "dial had slipped");
        GaugeWords said = new GaugeWords(workshop.words);
        assertTrue(said.withdrawnLast(session.state().sheet().run()).isPresent());
        session.note("told the inspector");
        assertEquals(
                Optional.empty(), said.withdrawnLast(session.state().sheet().run()));
        assertEquals(
                List.of("1 of the readings of check 13 no longer count: dial had slipped."),
                said.withdrawn(session.state().sheet().run(), BORE));
        assertEquals(List.of(), said.withdrawn(session.state().sheet().run(), PLUG));
    }

    @Test
    void theLineOfAGaugeSaysThatItIsNotSetYet() throws Exception {
        RunSession session = workshop.atTheBore("014", "0.012", "0.012", "0.011", "0.011");
        GaugeWords said = new GaugeWords(workshop.words);
        session.gauge().choose("BG-9");
        assertEquals(
                "BG-9, dial bore gauge · not set yet",
                said.line(session.state().sheet().run(), session.state().inHand()));
        session.gauge().choose("BG-2", Optional.of("MR-30"));
        session.enter("30.001");
        session.enter("0.03");
        assertEquals(
                "BG-2 · dial goes up as the bore grows · set on ring 30.001 (MR-30) · dial at 0.03",
                said.line(session.state().sheet().run(), session.state().inHand()));
        Workshop.toTheThread(session);
        session.enter("3.620");
        String wires = session.state()
                .setting()
                .orElseThrow()
                .certified()
                .orElseThrow()
                .text();
        assertTrue(said.line(session.state().sheet().run(), session.state().inHand())
                .endsWith(" · over wires " + wires));
    }

    private StepForm card(RunSession session) {
        StepForm model = new GaugeForm(workshop.inHand(session), workshop.words, workshop);
        model.load();
        return model;
    }

    private static List<String> offered(StepForm model) {
        return model.form().fields().get(0).choice().offeredProperty().get().stream()
                .map(row -> ((Remedy) row).reads())
                .toList();
    }

    private static void choose(StepForm model, int row) {
        choose(model.form(), row);
    }

    private static void choose(FormViewModel form, int row) {
        pick(form.inHandProperty().get(), row);
        form.goOn();
    }

    private static <T> void pick(Field<T> field, int row) {
        field.choice().choose(field.choice().offeredProperty().get().get(row));
    }
}
