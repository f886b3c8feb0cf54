package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.more.MoreView;
import org.tenthwise.app.ui.more.MoreViewModel;

/** What else there is to say of a step, on every display. */
class MoreScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private MoreViewModel more(RunSession session) {
        return new MoreViewModel(session, session.state(), workshop.tasks, workshop, words);
    }

    @Test
    void whatElseThereIsToSayOfABoreHoldsEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.012");
        seen("more", "bore", window -> new MoreView(more(session), words, window.pictures()));
    }

    @Test
    void whatIsReadMeanwhileIsTold() {
        RunSession session = workshop.atTheBore("014");
        MoreViewModel model = more(session);
        List<String> before = model.shownProperty().get().lines();
        for (String figure : List.of("0.013", "0.015", "0.014", "0.012")) {
            Workshop.must(() -> session.enter(figure));
        }
        model.refresh();
        List<String> after = model.shownProperty().get().lines();
        assertTrue(after.size() > before.size(), after::toString);
        model.bench();
        model.back();
        assertEquals(List.of("bench " + session.id(), "back"), workshop.asked);
    }
}
