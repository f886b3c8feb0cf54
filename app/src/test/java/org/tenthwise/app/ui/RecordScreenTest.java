package org.tenthwise.app.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.SixtyBalloons;
import org.tenthwise.app.device.AskedViewer;
import org.tenthwise.app.export.CsvRecord;
import org.tenthwise.app.handout.Handout;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.text.TestLanguage;
import org.tenthwise.app.ui.record.RecordView;
import org.tenthwise.app.ui.record.RecordViewModel;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.SignedAs;

/** The record in its states, on every display. */
class RecordScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private Screen record(Window window, String run) {
        return view(window, model(run));
    }

    private Screen view(Window window, RecordViewModel model) {
        return new RecordView(model, words, window.pictures(), workshop);
    }

    private RecordViewModel model(String run) {
        return model(run, Workshop.handout());
    }

    private RecordViewModel model(String run, Handout handout) {
        return new RecordViewModel(run, workshop.shop, handout, workshop.tasks, words, workshop, Workshop.CLOCK);
    }

    /** Where files can be opened. */
    private RecordViewModel saved(RunSession session) {
        RecordViewModel model = model(
                session.id(),
                new Handout(
                        List.of(new CsvRecord()),
                        (run, as) -> Path.of("/D-1/LG-2207/" + run + "-4F2A.csv"),
                        scope -> Optional.of(Path.of("/D-1/LG-2207/LG-2207-C-014-75-4F2A.tenthwise")),
                        run -> List.of(),
                        AskedViewer.there()));
        model.load();
        model.hand(model.formats().get(0));
        return model;
    }

    @Test
    void whereAFileWentAndTheKeyThatOpensItHoldEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.027");
        seen("record", "saved", window -> view(window, saved(session)));
    }

    @Test
    void theMessageThatAFileWasSavedHoldsEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.027");
        seen("record", "saved-told", window -> view(window, saved(session)), window -> window.shell()
                .tell(workshop.told.get(workshop.told.size() - 1)));
    }

    @Test
    void anUnfinishedRecordHoldsEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.027");
        seen("record", "unfinished", window -> record(window, session.id()));
    }

    @Test
    void whatTheRecordSaysIsSeenAtOnceEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.027");
        Workshop.must(() -> session.close("Inspector 1", SignedAs.NOT_ACCEPTED));
        seenAtOnce("outcome", window -> record(window, session.id()));
    }

    @Test
    void aClosedRecordHoldsEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.027");
        Workshop.must(() -> {
            session.strikeOut(session.state().pass().readings().get(0).entry().seq(), "Chip under the gauge");
            session.enter("0.012");
            session.dispose(Disposition.USE_AS_IS, "Key fitted by hand", "Inspector 1", "C-1");
            return session.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        });
        seen("record", "closed", window -> record(window, session.id()));
    }

    @Test
    void theRecordOfARunPutAwayHoldsEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013", "0.015");
        String why = language() == TestLanguage.ENGLISH ? FormsScreenTest.LONG_WORDS.substring(0, 118) : "E-7";
        Workshop.must(() -> session.shelf().putAway("Setter 3", why));
        seen("record", "put-away", window -> record(window, session.id()));
    }

    /** Order of work and drawing have numbers of their own; both stand in the row. */
    @Test
    void aRecordOfABalloonedPlanHoldsEverywhere() {
        RunSession session = workshop.begin(SixtyBalloons.PLAN, "001");
        Workshop.must(() -> session.answer(Answer.YES));
        seen("record", "balloons", window -> record(window, session.id()));
    }

    /** A bore read twice, once struck out, cut with a reason, conceded: everything behind its row. */
    @Test
    void whatLiesBehindARowHoldsEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.027");
        Workshop.must(() -> {
            session.strikeOut(session.state().pass().readings().get(0).entry().seq(), "E-7");
            session.enter("0.012");
            session.flagDoubt("T-2?");
            return session.dispose(Disposition.USE_AS_IS, "K-3", "Inspector 1", "C-1");
        });
        seen("record", "opened", window -> {
            RecordViewModel model = model(session.id());
            model.open(13);
            return view(window, model);
        });
    }
}
