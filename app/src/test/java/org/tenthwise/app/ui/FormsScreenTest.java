package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.ProvenElsewhere;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.ui.deed.CalibrationForm;
import org.tenthwise.app.ui.deed.CutOnTheseForm;
import org.tenthwise.app.ui.deed.DocumentForm;
import org.tenthwise.app.ui.deed.GaugeForm;
import org.tenthwise.app.ui.deed.MachineForm;
import org.tenthwise.app.ui.deed.OtherGaugeForm;
import org.tenthwise.app.ui.deed.PutAwayForm;
import org.tenthwise.app.ui.deed.StoodForm;
import org.tenthwise.app.ui.deed.StrikeForm;
import org.tenthwise.app.ui.deed.WordsForm;
import org.tenthwise.app.ui.deed.WrongSettingForm;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.shell.Navigator.Saying;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.plan.Answer;

/** Every form about the step in hand in its states, on every display; what is signed has a test of its own. */
class FormsScreenTest extends ScreenTest {

    static final String LONG_WORDS =
            "Chip pressed in between the jaw and the seat; taken out, seat wiped, indicator set to zero again, "
                    + "then read anew by Inspector 1";

    private static final GaugeOrMaster BORE_GAUGE = GaugeOrMaster.gauge("BG-2", GaugeKind.BORE_GAUGE);
    private static final Calibration LAST_YEARS = new Calibration("K-2211", Optional.of(LocalDate.parse("2025-03-31")));

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private static void type(FormViewModel form, String text) {
        text.chars().mapToObj(Character::toString).forEach(form::character);
    }

    private static void choose(FormViewModel form, int row) {
        choose(form.inHandProperty().get(), row);
    }

    private static <T> void choose(Field<T> field, int row) {
        field.choice().choose(field.choice().offeredProperty().get().get(row));
    }

    /** @param then what is done to the form once it is loaded */
    private Screen strike(Window window, RunSession session, Consumer<FormViewModel> then) {
        StepForm model = new StrikeForm(workshop.inHand(session), words, workshop, Workshop.CLOCK);
        FormView view = FormView.of(model, words, window.pictures());
        model.load();
        then.accept(model.form());
        return view;
    }

    @Test
    void strikingOutHoldsEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.016");
        seen("strike", "why", window -> strike(window, session, form -> {}));
        seen(
                "strike",
                "which",
                window ->
                        strike(window, session, form -> form.goTo(form.fields().get(0))));
        seen(
                "strike",
                "why-temperature",
                window -> strike(window, session, form -> choose(form.fields().get(0), 4)));
        seen("strike", "typed", window -> strike(window, session, form -> type(form, LONG_WORDS.substring(0, 118))));
    }

    @Test
    void puttingARunAwayHoldsEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013", "0.015");
        seen("put-away", "why", window -> putAway(window, session));
        seen("put-away", "nothing-read", window -> {
            RunSession begun = workshop.begin(DemoPart.SCREW_CARRIER, "015");
            return putAway(window, begun);
        });
    }

    @Test
    void aDocumentHoldsEverywhere() {
        RunSession session = Workshop.must(
                () -> workshop.shop.begin(new RunHeader(ProvenElsewhere.PLAN, "014", "L-1", "Lathe 4", "Setter 2")));
        session.goTo(50);
        seen("document", "says", window -> document(window, session, form -> {}));
        seen(
                "document",
                "figures",
                window -> document(window, session, form -> {
                    choose(form.fields().get(0), 1);
                    form.goTo(form.fields().get(1));
                    type(form, "0.021 0.034");
                }));
        seen(
                "document",
                "dated",
                window -> document(
                        window, session, form -> form.goTo(form.fields().get(3))));
        session.goTo(71);
        seen(
                "document",
                "of-a-material",
                window -> document(window, session, form -> choose(form.fields().get(0), 0)));
    }

    private Screen document(Window window, RunSession session, Consumer<FormViewModel> then) {
        StepForm model = new DocumentForm(workshop.inHand(session), words, workshop, Workshop.CLOCK);
        FormView view = FormView.of(model, words, window.pictures());
        model.load();
        then.accept(model.form());
        return view;
    }

    private Screen putAway(Window window, RunSession session) {
        StepForm model = new PutAwayForm(workshop.inHand(session), words, workshop);
        FormView view = FormView.of(model, words, window.pictures());
        model.load();
        choose(model.form(), 0);
        return view;
    }

    @Test
    void strikingOutAnAnswerHoldsEverywhere() {
        RunSession session = workshop.begin(DemoPart.SCREW_CARRIER, "014");
        Workshop.must(() -> session.answer(Answer.NO));
        seen("strike", "why-answer", window -> strike(window, session, form -> {}));
    }

    @Test
    void aFirstReadingTakenElsewhereHoldsEverywhere() {
        RunSession session = workshop.begin(DemoPart.SCREW_CARRIER, "014");
        Workshop.must(() -> session.answer(Answer.YES));
        Workshop.must(() -> session.goTo(4));
        for (String read : "0.040 0.000 0.041 0.000 0.033".split(" ")) {
            Workshop.must(() -> session.enter(read));
        }
        seen("stood", "where", window -> {
            StepForm model = new StoodForm(workshop.inHand(session), words, workshop);
            FormView view = FormView.of(model, words, window.pictures());
            model.load();
            choose(model.form(), 2);
            return view;
        });
    }

    @Test
    void strikingOutWhereThereIsNothingHoldsEverywhere() {
        RunSession session = workshop.begin(DemoPart.SCREW_CARRIER, "014");
        seen("strike", "nothing", window -> strike(window, session, form -> {}));
        run(() -> {
            Window window = window(Display.DAY);
            window.shell().show(strike(window, session, form -> {}));
            settle(window.scene());
            assertFalse(shown(window.scene().lookup("#commit")), "a key that leads nowhere");
        });
    }

    @Test
    void aCutOnWhatIsReadSoFarHoldsEverywhere() {
        RunSession session = workshop.setUp("014");
        Workshop.must(() -> session.goTo(9));
        Workshop.must(() -> session.enter("48.032"));
        seen("cut", "on-these", window -> {
            StepForm model = new CutOnTheseForm(workshop.inHand(session), words, workshop);
            FormView view = FormView.of(model, words, window.pictures());
            model.load();
            choose(model.form(), 0);
            return view;
        });
    }

    @Test
    void theMachineHoldsEverywhere() {
        RunSession session = workshop.setUp("014");
        Workshop.must(() -> session.goTo(9));
        for (int presses : new int[] {0, 1}) {
            seen("cut", presses == 0 ? "machine" : "aim", window -> {
                StepForm model = new MachineForm(workshop.inHand(session), words, workshop);
                FormView view = FormView.of(model, words, window.pictures());
                model.load();
                choose(model.form(), 0);
                model.form().goTo(model.form().fields().get(presses));
                return view;
            });
        }
    }

    @Test
    void wordsOfOnesOwnHoldEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013");
        for (Saying saying : Saying.values()) {
            seen("words", saying.name().toLowerCase(Locale.ROOT), window -> {
                StepForm model = new WordsForm(saying, workshop.inHand(session), words, workshop);
                FormView view = FormView.of(model, words, window.pictures());
                if (saying == Saying.NOTE) {
                    type(model.form(), LONG_WORDS);
                }
                return view;
            });
        }
    }

    @Test
    void anotherGaugeHoldsEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013");
        seen(
                "gauge",
                "known",
                window -> FormView.of(
                        new OtherGaugeForm(workshop.inHand(session), words, workshop), words, window.pictures()));
    }

    @Test
    void theCardOfAGaugeHoldsEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013");
        seen(
                "gauge",
                "card",
                window -> FormView.of(
                        new GaugeForm(workshop.inHand(session), words, workshop), words, window.pictures()));
    }

    @Test
    void theCertificateOfAGaugeHoldsEverywhere() throws Exception {
        RunSession session = workshop.atTheBore("014", "0.013");
        seen("gauge", "certificate", window -> certificate(window, session));
        session.gauge().calibrated(BORE_GAUGE, LAST_YEARS, true);
        seen("gauge", "certificate-past-due", window -> certificate(window, session));
        seen("gauge", "certificate-counts-for", window -> {
            StepForm model = new CalibrationForm(workshop.inHand(session), BORE_GAUGE, words, workshop);
            FormView view = FormView.of(model, words, window.pictures());
            model.load();
            model.form().goTo(model.form().fields().get(1));
            model.form().fields().get(1).type();
            type(model.form(), "2027-03-31");
            model.form().goTo(model.form().fields().get(2));
            return view;
        });
        seen(
                "gauge",
                "card-past-due",
                window -> FormView.of(
                        new GaugeForm(workshop.inHand(session), words, workshop), words, window.pictures()));
    }

    private Screen certificate(Window window, RunSession session) {
        StepForm model = new CalibrationForm(workshop.inHand(session), BORE_GAUGE, words, workshop);
        FormView view = FormView.of(model, words, window.pictures());
        model.load();
        return view;
    }

    @Test
    void whatGoesWithAWrongSettingHoldsEverywhere() {
        workshop.atTheBore("014", "0.013");
        workshop.atTheBore("015", "0.012", "0.014");
        RunSession session = workshop.atTheBore("016", "0.013", "0.011", "0.012");
        seen(
                "gauge",
                "wrong-sense",
                window -> FormView.of(
                        new WrongSettingForm(
                                workshop.inHand(session),
                                session.state().settingsHere().get(0),
                                SettingFault.SENSE,
                                words,
                                workshop),
                        words,
                        window.pictures()));
    }
}
