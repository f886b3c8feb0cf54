package org.tenthwise.app.ui.run;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.text.RunOutAtHand;
import org.tenthwise.app.text.TestLanguage;
import org.tenthwise.app.ui.Display;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Holding;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpRunScreenTest extends RunScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** The one with the narrowest columns: there are many states. */
    @Override
    protected List<Display> displays() {
        return List.of(Display.DAY);
    }

    /**
     * What was typed, names of the plan at the beginning of a sentence, what it says of its limits, and another plan.
     */
    @Override
    protected String data() {
        return "Key fitted by hand Misread Gauge slipped Near the jaws Far out by its tables All " + stub()
                + AngleScreenTest.LENGTH_THEN_ANGLE;
    }

    private static String stub() {
        try {
            return Files.readString(Path.of("src/test/resources/plans/stub-in-inches.toml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void theLongestAdviceHoldsEverywhere() throws Exception {
        beginARunOf(RunOutAtHand.twoOfTheDrawing(Holding.FOUR_JAW).plan());
        run.enter("0.040", "-0.004", "0.050", "-0.052");
        run.enter("0.038", "0.024", "0.018", "0.006", "-0.002", "0.002", "0.010", "0.026");
        run.enter("0.030", "0.050", "0.045", "0.015", "-0.025", "-0.051", "-0.045", "-0.017");
        seen("run", "run-out-two-sections-fail", this::screen);
    }

    @Test
    void howTheGaugeTouchedHoldsEverywhere() throws Exception {
        beginARunOf(InventedPlans.read(stub()));
        run.enter("1.4070", "1.4064");
        seen("run", "grooves-asked", this::screen);
        run.session.answer(Answer.OPPOSITE_GROOVES);
        seen("run", "grooves-corrected", this::screen);
        run.session.goTo(2);
        seen("run", "temperature-fahrenheit", this::screen);
    }

    @Test
    void anAngleHoldsEverywhereAndSoDoesWhyOneIsNotTaken() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(AngleScreenTest.LENGTH_THEN_ANGLE));
        run.session.goTo(2);
        seen("run", "run-angle-no-angle", window -> typed(window, "30°75"));
        seen("run", "run-angle-decimals", window -> typed(window, "30.10"));
        run.enter("30°10'", "30°41'30");
        seen("run", "run-angle-fail", this::screen);
    }

    private RunScreen typed(Window window, String figure) {
        RunViewModel model = atOnce();
        sends(model, figure);
        return new RunScreen(model, window.pictures(), words);
    }
}
