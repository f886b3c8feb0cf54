package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.story.StoryLine;
import org.tenthwise.app.ui.more.MoreView;
import org.tenthwise.app.ui.more.MoreViewModel;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/** What else there is to say of a step, on every display. */
class MoreScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private MoreViewModel more(RunSession session) {
        return new MoreViewModel(session, session.state(), workshop.tasks, workshop, words);
    }

    private static List<String> told(MoreViewModel model) {
        return model.shownProperty().get().chapters().stream()
                .flatMap(chapter -> chapter.lines().stream())
                .map(StoryLine::words)
                .toList();
    }

    @Test
    void whatElseThereIsToSayOfABoreHoldsEverywhere() {
        RunSession session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.012");
        seen("more", "bore", window -> new MoreView(more(session), words, window.pictures()));
    }

    /** Measured twice with a reading struck out, behind a part before. */
    private RunSession aLongStory() {
        workshop.atTheBore("013", "0.009", "0.010", "0.012", "0.011");
        RunSession session = workshop.atTheBore("014", "0.013", "0.031", "0.014", "0.012");
        Workshop.must(() -> session.strikeOut(
                session.state().pass().readings().get(1).entry().seq(), "Chip or dirt under the gauge"));
        Workshop.must(() -> session.note("Bar springs at the mouth"));
        Workshop.must(() -> session.again(Why.MEASURED_AGAIN));
        return session;
    }

    @Test
    void theStoryOfAStepHoldsEverywhere() {
        RunSession session = aLongStory();
        seen("more", "story", window -> new MoreView(more(session), words, window.pictures()));
    }

    @Test
    void itsSecondPageHoldsEverywhere() {
        RunSession session = aLongStory();
        seen(
                "more",
                "story-2",
                window -> new MoreView(more(session), words, window.pictures()),
                window -> press(window.scene(), "later"));
    }

    @Test
    void whatIsReadMeanwhileIsTold() {
        RunSession session = workshop.atTheBore("014");
        MoreViewModel model = more(session);
        List<String> before = told(model);
        for (String figure : List.of("0.013", "0.015", "0.014", "0.012")) {
            Workshop.must(() -> session.enter(figure));
        }
        model.refresh();
        List<String> after = told(model);
        assertTrue(after.size() > before.size(), after::toString);
        model.bench();
        model.back();
        assertEquals(List.of("bench " + session.id(), "back"), workshop.asked);
    }
}
