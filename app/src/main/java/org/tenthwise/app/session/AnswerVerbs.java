package org.tenthwise.app.session;

import java.util.Optional;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Entry;

/**
 * A question answered by one tap, and that answer taken back by another. As with the verbs of the run, one that is not
 * taken says why and changes nothing.
 */
public final class AnswerVerbs {

    private final RunSession session;

    AnswerVerbs(RunSession session) {
        this.session = session;
    }

    /**
     * Answers what is asked. Where the check only asks and passes by it, the next one that follows in the plan is in
     * hand; after any other answer it stays, and so does one that would lead back to a check passed over.
     *
     * @param step the one in hand as whoever answered saw it
     */
    public Reply give(int step, Answer answer) throws CouldNotSave {
        if (session.state().inHand().number() != step) {
            return session.replied(Optional.of(Objection.of(Objection.Kind.NOT_ASKED_HERE)));
        }
        Reply given = session.answer(answer);
        boolean goesOn = given.objection().isEmpty() && hasPassedByAnswers(given.state());
        return goesOn ? onwards(given) : given;
    }

    /** A check that measures stays in sight with what it found. */
    private static boolean hasPassedByAnswers(State state) {
        return state.inHand().check().slots().isEmpty()
                && state.asked().isNothing()
                && state.line().finding().verdict().passed();
    }

    private Reply onwards(Reply given) {
        return given.state()
                .next()
                .filter(next -> next.number() > given.state().inHand().number())
                .map(Step::number)
                .map(session::goTo)
                .orElse(given);
    }

    /**
     * Strikes out the answer given last, while nothing was done after it, and has its check in hand again.
     *
     * @param entry {@code seq} of the answer as whoever takes it back saw it
     */
    public Reply undo(long entry, String reason) throws CouldNotSave {
        Optional<Entry> last = session.state().undoable().filter(answer -> answer.seq() == entry);
        if (last.isEmpty()) {
            return session.replied(Optional.of(Objection.of(Objection.Kind.NOT_ASKED_HERE)));
        }
        Reply struck = session.strikeOut(entry, reason);
        return struck.objection().isPresent()
                ? struck
                : session.goTo(last.get().event().at().orElseThrow());
    }
}
