package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.run.RunScreen;
import org.tenthwise.app.ui.run.RunViewModel;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/**
 * The size of the part before at a step of which nothing is read yet: told with its serial, and no longer than that.
 */
class LastPartScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private RunViewModel run(RunSession session) {
        return new RunViewModel(session, session.state(), workshop.tasks, workshop, words, Workshop.CLOCK);
    }

    private static List<String> shown(RunViewModel model) {
        return model.shownProperty().get().found().shown();
    }

    private String said(String size) {
        return words.say("story.last.brief", "013", size);
    }

    @Test
    void untilTheFirstReadingItIsInSight() {
        workshop.atTheBore("013", "0.009", "0.010", "0.012", "0.011");
        RunSession session = workshop.atTheBore("014");
        assertTrue(shown(run(session)).contains(said("30.009")), () -> shown(run(session))
                .toString());
        Workshop.must(() -> session.enter("0.012"));
        assertEquals(List.of(), bySerial(run(session)), "this part has a size of its own");
        Workshop.must(() -> session.again(Why.MEASURED_AGAIN));
        assertEquals(List.of(), bySerial(run(session)), "and keeps it in another pass");
    }

    @Test
    void atAStepThatIsOnlyAskedAboutAndOnAFirstPartThereIsNone() {
        RunSession session = workshop.atTheBore("013", "0.009", "0.010", "0.012", "0.011");
        assertEquals(List.of(), bySerial(run(session)));
        RunSession next = workshop.atTheBore("014");
        next.goTo(1);
        assertEquals(List.of(), bySerial(run(next)));
    }

    private static List<String> bySerial(RunViewModel model) {
        return shown(model).stream().filter(said -> said.contains("013")).toList();
    }

    @Test
    void itHoldsEverywhere() {
        workshop.atTheBore("013", "0.009", "0.010", "0.012", "0.011");
        RunSession session = workshop.atTheBore("014");
        seen("run", "last-part", window -> new RunScreen(run(session), window.pictures(), words));
    }

    @Test
    void oneThatFailedHoldsEverywhere() {
        workshop.atTheBore("013", "0.009", "0.030", "0.012", "0.011");
        RunSession session = workshop.atTheBore("014");
        seen("run", "last-part-failed", window -> new RunScreen(run(session), window.pictures(), words));
    }
}
