package org.tenthwise.app.session;

import java.util.Optional;
import java.util.function.Predicate;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.PlainPass;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;

/**
 * How a check that is done leads on to the next: by the first figure of that one, or by itself where that one is
 * answered by a tap. As with the verbs of the run, one that is not taken says why and changes nothing.
 */
public final class Onwards {

    private final RunSession session;
    private final EntryCheck gate;

    Onwards(RunSession session, EntryCheck gate) {
        this.session = session;
        this.gate = gate;
    }

    /**
     * Takes a figure as the first of the next check, where that asks for a reading and the figure lies within a few
     * tolerances of it; otherwise stays, and asks.
     *
     * <p>A check that this figure alone fills is left as {@link #after} has it, unless the figure could be meant for
     * the one before, or the check says how it is to be read: that stays in sight, for nobody has seen its screen yet.
     *
     * @param step the one in hand as whoever typed it saw it
     */
    public Reply enterNext(int step, String text, Predicate<State> saysNoMore) throws CouldNotSave {
        Step here = session.state().inHand();
        Optional<Step> next = session.state().next();
        if (session.state().inHand().number() == step
                && session.state().figureBeginsNext()
                && next.filter(opened -> opens(opened, text)).isPresent()) {
            boolean unseen = fits(here, text) || isReadInItsOwnWay(next.get());
            session.goTo(next.get().number());
            Reply opened = session.enter(text);
            return unseen ? opened : after(opened, saysNoMore);
        }
        return session.replied(Optional.of(new Objection(Objection.Kind.OPENS_NEXT, text)));
    }

    private boolean opens(Step step, String text) {
        return session.asked(step).asReading().isPresent() && fits(step, text);
    }

    private static boolean isReadInItsOwnWay(Step step) {
        return step.check()
                .asSize()
                .map(CheckOfSize::contact)
                .filter(contact -> !contact.equals(Contact.SQUARE))
                .isPresent();
    }

    private boolean fits(Step step, String text) {
        return gate.opens(step, text, session.state().sheet().run().gauges().setting(step.number()));
    }

    /**
     * Goes on by itself from a check that has just passed plainly to the next one of the plan, where that is answered
     * by a tap and no hold point lies between. What takes a figure is never gone on to: one that a gauge sends once too
     * often would be read there. Nor is it left while a check before it is open, as one that its cut opened again.
     *
     * @param done what became of what was taken last
     * @param saysNoMore whether nothing is to be said of the check but its verdict
     */
    public Reply after(Reply done, Predicate<State> saysNoMore) {
        State state = done.state();
        boolean passed = done.objection().isEmpty()
                && state.asked().isNothing()
                && wasTakenHere(state)
                && PlainPass.is(state.line())
                && saysNoMore.test(state);
        return passed
                ? state.next()
                        .filter(next -> follows(next, state) && isAnsweredByATap(session.asked(next)))
                        .map(next -> session.goTo(next.number()))
                        .orElse(done)
                : done;
    }

    private static boolean wasTakenHere(State state) {
        Run run = state.sheet().run();
        Entry last = run.entries().get(run.entries().size() - 1);
        return last.event().changesTheFinding()
                && run.step(last).equals(Optional.of(state.inHand().number()));
    }

    private static boolean follows(Step next, State state) {
        int here = state.inHand().number();
        return next.number() > here
                && state.sheet().lines().stream()
                        .filter(line -> line.step().number() < here)
                        .noneMatch(Line::open)
                && state.sheet().plan().steps().stream()
                        .filter(step -> step.number() >= here && step.number() < next.number())
                        .allMatch(step -> step.hold().isEmpty());
    }

    private static boolean isAnsweredByATap(Prompt asked) {
        return !asked.takesFigure() && !asked.isNothing() && !asked.asksDocument();
    }
}
