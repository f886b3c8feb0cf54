package org.tenthwise.app.ui.run;

import java.util.Optional;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.run.RunScreenState.Allowed;
import org.tenthwise.app.ui.run.RunScreenState.Commit;
import org.tenthwise.app.ui.run.RunScreenState.Meaning;
import org.tenthwise.app.ui.run.RunScreenState.OtherWay;
import org.tenthwise.app.ui.run.RunScreenState.PromptPanel;
import org.tenthwise.app.ui.run.RunScreenState.Strike;
import org.tenthwise.app.ui.run.RunScreenState.Undo;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Proposal;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** Puts what the step in hand wants next into the words and keys that lie under the hand. */
final class PromptPresenter {

    private final Words words;

    PromptPresenter(Words words) {
        this.words = words;
    }

    PromptPanel panel(State state) {
        return state.asked().match(new PromptPanels(words, state));
    }

    /** The commit key while nothing is typed. */
    Commit first(State state) {
        return state.asked().match(new CommitKeys(words, state));
    }

    /** Over its limit by a full turn, work can be trued up by the needle alone, without a reading by angle. */
    private Optional<OtherWay> truedByTheNeedle(State state) {
        return state.line()
                .finding()
                .asTurn()
                .filter(turn -> byAngle(state.asked())
                        && turn.swept()
                        && !CommitKeys.movesNothing(turn)
                        && turn.verdict().standing() == VerdictKind.FAIL)
                .map(turn -> new OtherWay(words.say(CommitKeys.moved(turn)), new Meaning.Moved()));
    }

    /** Whether a reading is asked for at an angle of a turn. */
    static boolean byAngle(Prompt asked) {
        return asked.asReading()
                .flatMap(reading -> reading.slot().place().angle())
                .isPresent();
    }

    /** Whether something forbids a cut that could be taken, or nothing that this tool cuts may come off. */
    private static boolean cutAgainstTheAdvice(State state) {
        return CommitKeys.isForbidden(state)
                || state.line().finding().verdict().standing() == VerdictKind.CUT_AGAIN
                        && state.mayCut()
                        && CommitKeys.way(state)
                                .filter(Proposal.Way.NONE::equals)
                                .isPresent();
    }

    /** @param finished the check that gave way to the one in hand, where it is to be seen still */
    Allowed allowed(State state, Optional<Line> finished) {
        boolean open = !state.asked().isShut();
        VerdictKind standing = state.line().finding().verdict().standing();
        boolean out = standing != VerdictKind.PASS && standing != VerdictKind.OPEN;
        boolean gauged = state.inHand().check().means().isPresent();
        return new Allowed(
                state.mayBeginPass(),
                gauged && (open || !state.settingsHere().isEmpty()),
                open && out,
                strike(state, finished).filter(any -> open),
                otherWay(state),
                undo(state));
    }

    private Optional<Strike> strike(State state, Optional<Line> finished) {
        return state.pass().isEmpty()
                ? finished.map(line -> line.step().number())
                        .map(before -> new Strike(before, words.say("run.strike.before", before)))
                : Optional.of(new Strike(state.inHand().number(), words.say("run.strike")));
    }

    private Optional<Undo> undo(State state) {
        return state.undoable()
                .map(answer -> new Undo(
                        answer.seq(), words.say("run.undo", answer.event().at().orElseThrow())));
    }

    private Optional<OtherWay> otherWay(State state) {
        if (state.mayCutOnThese() && state.line().finding().verdict().standing() == VerdictKind.CUT_AGAIN) {
            return Optional.of(new OtherWay(words.say("run.cut-on-these"), new Meaning.CutOnThese()));
        }
        if (cutAgainstTheAdvice(state)) {
            return Optional.of(new OtherWay(words.say("run.cut-taken"), new Meaning.CutTaken()));
        }
        if (state.turnable()) {
            return Optional.of(new OtherWay(
                    words.say(state.readingsFirst() ? "run.temperature.first" : "run.temperature.after"),
                    new Meaning.ReadingsFirst(!state.readingsFirst())));
        }
        if (state.movable().isPresent()) {
            return Optional.of(new OtherWay(words.say("run.stood"), new Meaning.StoodElsewhere()));
        }
        return state.otherTurn()
                .map(sweep ->
                        new OtherWay(words.say(sweep ? "run.sweep.on" : "run.sweep.off"), new Meaning.Sweep(sweep)))
                .or(() -> truedByTheNeedle(state));
    }
}
