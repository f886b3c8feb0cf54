package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.ProvenElsewhere;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.app.text.TestLanguage;
import org.tenthwise.app.ui.about.AboutFacts;
import org.tenthwise.app.ui.about.AboutView;
import org.tenthwise.app.ui.about.AboutViewModel;
import org.tenthwise.app.ui.about.LicencesView;
import org.tenthwise.app.ui.about.LicencesViewModel;
import org.tenthwise.app.ui.begin.BeginView;
import org.tenthwise.app.ui.begin.BeginViewModel;
import org.tenthwise.app.ui.deed.CutOnTheseForm;
import org.tenthwise.app.ui.deed.DisposeForm;
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
import org.tenthwise.app.ui.sign.SignView;
import org.tenthwise.app.ui.sign.SignViewModel;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.run.SignedAs;

/** Every form in its states, on every display. */
class FormsScreenTest extends ScreenTest {

    static final String LONG_WORDS =
            "Chip pressed in between the jaw and the seat; taken out, seat wiped, indicator set to zero again, "
                    + "then read anew by Inspector 1";

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
    void aDispositionHoldsEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.027");
        seen("dispose", "what", window -> dispose(window, session, 0));
        seen("dispose", "why", window -> dispose(window, session, 1));
        seen("dispose", "number", window -> dispose(window, session, 2));
        seen("dispose", "who", window -> dispose(window, session, 3));
    }

    @Test
    void theNumberOfWhatIsCarriedOnWithHoldsEverywhere() {
        RunSession session = workshop.begin(DemoPart.SCREW_CARRIER, "014");
        Workshop.must(() -> session.answer(Answer.NO));
        seen("dispose", "number-carry-on", window -> {
            StepForm model = new DisposeForm(workshop.inHand(session), words, workshop);
            FormView view = FormView.of(model, words, window.pictures());
            model.load();
            choose(
                    model.form(),
                    model.form()
                                    .inHandProperty()
                                    .get()
                                    .choice()
                                    .offeredProperty()
                                    .get()
                                    .size()
                            - 1);
            model.form().goOn();
            choose(model.form(), 0);
            model.form().goOn();
            return view;
        });
    }

    /** Nobody decides on a part without its verdict before his eyes. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void theVerdictIsInSightWhateverIsAskedOfADisposition(int presses) {
        RunSession session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.027");
        seenAtOnce("verdict", window -> dispose(window, session, presses));
    }

    private Screen dispose(Window window, RunSession session, int presses) {
        StepForm model = new DisposeForm(workshop.inHand(session), words, workshop);
        FormView view = FormView.of(model, words, window.pictures());
        model.load();
        for (int i = 0; i < presses; i++) {
            choose(model.form(), i == 0 ? 1 : 0);
            model.form().goOn();
        }
        return view;
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

    @Test
    void beginningHoldsEverywhere() {
        seen("begin", "empty", window -> begin(window, DemoPart.WINCH_BARREL_END, ""));
        workshop.atTheBore("014", "0.013");
        seen("begin", "next", window -> begin(window, DemoPart.SCREW_CARRIER, ""));
        seen("begin", "already", window -> begin(window, DemoPart.SCREW_CARRIER, "014"));
        seen("begin", "machine", window -> {
            BeginViewModel model = new BeginViewModel(
                    DemoPart.SCREW_CARRIER.plan(), workshop.shop, workshop.tasks, words, workshop, Workshop.CLOCK);
            BeginView view = new BeginView(model, words, window.pictures(), workshop);
            model.load();
            type(model.form(), "016");
            model.form().goTo(model.form().fields().get(2));
            return view;
        });
    }

    private Screen begin(Window window, DemoPart part, String serial) {
        BeginViewModel model =
                new BeginViewModel(part.plan(), workshop.shop, workshop.tasks, words, workshop, Workshop.CLOCK);
        BeginView view = new BeginView(model, words, window.pictures(), workshop);
        model.load();
        type(model.form(), serial);
        return view;
    }

    @Test
    void closingHoldsEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.027");
        seen("sign", "unfinished", window -> sign(window, session, false, 0));
        seen("sign", "meaning", window -> sign(window, session, false, 1));
        seen("sign", "end", window -> sign(window, session, false, 2));
        Workshop.must(() -> session.close("Inspector 1", SignedAs.NOT_ACCEPTED));
        seen("sign", "further", window -> sign(window, session, true, 1));
    }

    @Test
    void whatIsSignedForIsSeenAtOnceEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.027");
        for (int presses : new int[] {0, 1, 2}) {
            seenAtOnce("will-be", window -> sign(window, session, false, presses));
            if (language() == TestLanguage.ENGLISH) {
                seenAtOnce("matter-13", window -> sign(window, session, false, presses));
            }
        }
    }

    /** Nothing is left to be listed then, and what the signature comes to is said all the same. */
    @Test
    void whatARunComesToOfWhichAllPassedIsSaidBeforeItIsSigned() {
        RunSession session = workshop.begin(
                InventedPlans.inMillimetres(
                        """
                        [[step]]
                        number = 1
                        operation = 10
                        kind = "width"
                        name = "Slot"
                        method = "In the middle."
                        lower = 12.000
                        upper = 12.043
                        places = ["middle"]
                        gauge_kind = "inside-micrometer"
                        gauge = "IM-1"
                        """),
                "015",
                "AB-7731",
                "Lathe 4",
                "Setter 2");
        Workshop.must(() -> session.enter("12.021"));
        seenAtOnce("will-be", window -> sign(window, session, false, 0));
        run(() -> {
            Window window = window(Display.DAY);
            window.shell().show(sign(window, session, false, 0));
            settle(window.scene());
            OutcomeWords said = new OutcomeWords(words);
            assertEquals(
                    List.of(
                            words.say("sign.will-be", words.sentence(words.say("outcome", Outcome.CONFORMS))),
                            said.counts(session.state().sheet())),
                    Stream.of("#will-be", "#passed")
                            .map(id -> ((Label) window.scene().lookup(id)).getText())
                            .toList());
        });
    }

    private Screen sign(Window window, RunSession session, boolean closed, int presses) {
        SignViewModel model = new SignViewModel(workshop.inHand(session), closed, words, workshop, Workshop.CLOCK);
        SignView view = new SignView(model, words, window.pictures(), workshop);
        model.load();
        choose(model.form(), 0);
        for (int i = 0; i < presses; i++) {
            model.form().goOn();
            choose(model.form(), i == 0 ? 3 : 0);
        }
        return view;
    }

    @Test
    void aboutWithPlanFilesThatAreNotUsedHoldsEverywhere() {
        seen("about", "refused", window -> {
            AboutViewModel model = new AboutViewModel(
                    new AboutFacts("0.1.0", "here", "there", List::of), InventedPlans::unsound, workshop.tasks, words);
            model.load();
            return new AboutView(model, words, workshop);
        });
    }

    @Test
    void licencesHoldEverywhere() {
        seen(
                "licences",
                "ours",
                window -> new LicencesView(new LicencesViewModel(words), words, window.look(), workshop));
    }

    @Test
    void aboutHoldsEverywhere() {
        seen(
                "about",
                "cautions",
                window -> new AboutView(
                        new AboutViewModel(
                                new AboutFacts(
                                        "0.1.0",
                                        "/data/user/0/org.tenthwise.app/files/tenthwise.db",
                                        "/data/user/0/org.tenthwise.app/files/plans",
                                        () -> List.of(
                                                "The last complete backup was made on 30 November 2026, 07:15.",
                                                "One is made after each closed run and once a day.")),
                                Catalogue::ofDemoParts,
                                workshop.tasks,
                                words),
                        words,
                        workshop));
    }
}
