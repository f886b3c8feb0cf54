package org.tenthwise.app.ui;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.export.CsvRecord;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.record.Handout;
import org.tenthwise.app.ui.record.RecordView;
import org.tenthwise.app.ui.record.RecordViewModel;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.SignedAs;

/** The record in its states, on every display. */
class RecordScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private Screen record(Window window, String run) {
        RecordViewModel model = new RecordViewModel(
                run,
                workshop.shop,
                new Handout(List.of(new CsvRecord()), (id, as) -> Path.of(id)),
                workshop.tasks,
                words,
                workshop);
        return new RecordView(model, words, window.pictures(), workshop);
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
}
