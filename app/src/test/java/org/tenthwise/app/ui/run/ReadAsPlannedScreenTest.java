package org.tenthwise.app.ui.run;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.plan.Answer;

/** The run screen where a plan says how the gauge touches, whether the part is held, and reads in °F. */
class ReadAsPlannedScreenTest extends RunAtHand {

    @BeforeEach
    void beginAStub() throws Exception {
        beginARunOf(InventedPlans.read(Files.readString(Path.of("src/test/resources/plans/stub-in-inches.toml"))));
    }

    @Test
    void theQuestionHowItTouchedHoldsEverywhere() throws Exception {
        run.enter("1.4070", "1.4064");
        seen("grooves-asked");
    }

    @Test
    void theCorrectedRootHoldsEverywhere() throws Exception {
        run.enter("1.4070", "1.4064");
        run.session.answer(Answer.OPPOSITE_GROOVES);
        seen("grooves-corrected");
    }

    @Test
    void aTemperatureInFahrenheitOfAPartLetGoHoldsEverywhere() {
        run.session.goTo(2);
        seen("temperature-fahrenheit");
    }

    @Test
    void aBoreBroughtToSixtyEightDegreesHoldsEverywhere() throws Exception {
        run.session.goTo(2);
        run.enter("77.0", "68", "1.18195", "1.1818");
        seen("bore-fahrenheit");
    }

    @Test
    void aDrilledHoleHoldsEverywhere() throws Exception {
        run.session.goTo(3);
        run.enter("1.080");
        seen("drilled");
    }

    private void seen(String state) {
        seen("run", state, this::screen);
    }
}
