package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.app.text.TestLanguage;
import org.tenthwise.app.ui.deed.DisposeForm;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.sign.SignView;
import org.tenthwise.app.ui.sign.SignViewModel;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.run.SignedAs;

/** What is signed for: a disposition of one check, and the end of a run. */
class SigningScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private static void choose(FormViewModel form, int row) {
        choose(form.inHandProperty().get(), row);
    }

    private static <T> void choose(Field<T> field, int row) {
        field.choice().choose(field.choice().offeredProperty().get().get(row));
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
}
