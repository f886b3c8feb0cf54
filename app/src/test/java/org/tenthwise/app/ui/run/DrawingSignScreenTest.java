package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.ui.more.MoreView;
import org.tenthwise.app.ui.more.MoreViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;

/** Signs of drawings that the lettering lacks, in everything a plan can say: none may be seen as an empty box. */
class DrawingSignScreenTest extends RunAtHand {

    private static final String COUNTERBORE =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "size"
            feature = "counterbore"
            name = "⌴ for the screw"
            requirement = "4X ⌴ ⌀15 ±0.1"
            method = "⌵ first, then ⌴ ↧8."
            caution = "⌴ cutter: chips fly"
            lower = 14.9
            upper = 15.1
            places = ["⌴ top", "⌴ floor"]
            gauge_kind = "caliper"
            gauge = "CA-1"

            [[step]]
            number = 2
            operation = 10
            kind = "look"
            name = "⌖ and ⌰"
            requirement = "⌖ ⌀0.1 Ⓜ A B; ⌰ 0.05 A; ⟂ 0.02 A; □12"
            what = "As on the drawing: ⌓ 0.2."
            method = "See ⌓."
            """;

    @BeforeEach
    void aCounterbore() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(COUNTERBORE));
    }

    @Test
    void aStepHoldsEverywhere() throws Exception {
        run.enter("15.4");
        seen("run", "signs", this::screen);
    }

    @Test
    void theRequirementIsSaidInTheWordsOfTheTrade() {
        assertEquals(
                "4X CBORE Ø15 ±0.1",
                new RunPresenter(words).of(run.session.state()).inHand().drawing());
    }

    @Test
    void aLookHoldsEverywhere() {
        run.session.goTo(2);
        seen("run", "signs-look", this::screen);
    }

    @Test
    void whatElseThereIsHoldsEverywhere() {
        seen(
                "more",
                "signs",
                window -> new MoreView(
                        new MoreViewModel(
                                run.session,
                                run.session.state(),
                                new LedgerTasks(new Background(Runnable::run, Runnable::run), words, ways),
                                ways,
                                words),
                        words,
                        window.pictures()));
    }
}
