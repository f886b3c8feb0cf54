package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.DemoPlans;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.run.RunScreenState.Meaning;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.verdict.VerdictKind;

/** A second tap that comes before the first is on the disk, where yes is the good answer to both of two questions. */
class SecondTapTest extends RunAtHand {

    private static final Plan NUT = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "go-not-go"
            name = "Nut"
            method = "By hand."
            go = "Runs on all the way."
            not_go = "Runs on more than two turns."
            gauge = "NG-1"

            [[step]]
            number = 2
            operation = 10
            kind = "look"
            name = "Edges"
            what = "Broken."

            [[step]]
            number = 3
            operation = 10
            kind = "look"
            name = "Part"
            what = "Clean."
            """);

    private final List<Runnable> waiting = new ArrayList<>();
    private RunViewModel model;

    @BeforeEach
    void atANut() throws Exception {
        beginARunOf(NUT);
        model = model(waiting::add);
    }

    private State kept() {
        List<Runnable> now = List.copyOf(waiting);
        waiting.clear();
        now.forEach(Runnable::run);
        return run.session.state();
    }

    @Test
    void itDoesNotSpeakForTheEndThatNobodyTried() {
        model.reply(new Meaning.Answered(Answer.YES));
        model.reply(new Meaning.Answered(Answer.YES));
        assertEquals(new Prompt.Answering(Question.NOT_GO_STAYS_OUT), kept().asked());
        model.reply(new Meaning.Answered(Answer.NO));
        assertEquals(VerdictKind.FAIL, kept().line().finding().verdict().standing());
    }

    @Test
    void itLeavesNoCheckOut() throws Exception {
        model.reply(new Meaning.Answered(Answer.YES));
        kept();
        model.reply(new Meaning.Answered(Answer.YES));
        assertEquals(
                VerdictKind.PASS, kept().sheet().line(1).finding().verdict().standing());
        assertEquals(2, run.session.state().inHand().number());
        model.press();
        assertEquals(2, kept().inHand().number());
    }

    /** Both checks ask alike, and their answers lie in one place. */
    @Test
    void itDoesNotAnswerTheCheckThatCameByTheFirst() {
        clock.hold();
        run.session.goTo(2);
        model.refresh();
        kept();
        clock.pass(800);
        model.reply(new Meaning.Answered(Answer.YES));
        assertEquals(3, kept().inHand().number());
        for (int bounced = 0; bounced < 7; bounced++) {
            clock.pass(100);
            model.reply(new Meaning.Answered(Answer.YES));
        }
        assertEquals(List.of(), waiting);
        clock.pass(100);
        model.reply(new Meaning.Answered(Answer.YES));
        assertEquals(
                VerdictKind.PASS, kept().sheet().line(3).finding().verdict().standing());
    }

    @Test
    void itDoesNotTakeBackWhatTheFirstAnswered() {
        clock.hold();
        clock.pass(800);
        model.reply(new Meaning.Answered(Answer.YES));
        kept();
        model.undoOrStrike();
        assertEquals(List.of(), waiting);
        clock.pass(400);
        model.undoOrStrike();
        assertEquals(new Prompt.Answering(Question.GO_ENTERS), kept().asked());
        clock.pass(200);
        model.undoOrStrike();
        assertEquals(List.of(), ways.asked);
    }

    /** Part and gauge were as warm at the check before: the key looks the same for both. */
    @Test
    void itDoesNotTakeTheTemperatureOfTheGaugeWithThatOfThePart() throws Exception {
        beginARunOf(DemoPlans.outsideAsRead());
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("-0.142");
        run.session.again(Why.MEASURED_AGAIN);
        model = model(waiting::add);
        clock.hold();
        clock.pass(400);
        model.press();
        assertEquals(MeasuredBody.GAUGE, temperatureAsked());
        clock.pass(300);
        model.press();
        assertEquals(MeasuredBody.GAUGE, temperatureAsked());
        clock.pass(100);
        model.press();
        assertTrue(kept().asked().asReading().isPresent());
    }

    private MeasuredBody temperatureAsked() {
        return assertInstanceOf(Prompt.Temperature.class, kept().asked()).of();
    }
}
