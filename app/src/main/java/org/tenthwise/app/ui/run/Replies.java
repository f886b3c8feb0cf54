package org.tenthwise.app.ui.run;

import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.tenthwise.app.session.Reply;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.run.RunScreenState.Meaning;
import org.tenthwise.app.ui.shell.Deed;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/** What is asked of the run, or where it is gone to, by a key that answers. */
final class Replies {

    private final RunSession session;
    private final Navigator navigator;
    private final Supplier<State> state;
    private final UnaryOperator<Reply> onwards;
    private final Consumer<Callable<Reply>> ask;

    /**
     * @param onwards goes on by itself where a check is done; on the thread of the ledger
     * @param ask asks something of the run, on the thread of the ledger
     */
    Replies(
            RunSession session,
            Navigator navigator,
            Supplier<State> state,
            UnaryOperator<Reply> onwards,
            Consumer<Callable<Reply>> ask) {
        this.session = session;
        this.navigator = navigator;
        this.state = state;
        this.onwards = onwards;
        this.ask = ask;
    }

    void act(Meaning meaning) {
        if (meaning instanceof Meaning.Answered answered) {
            int step = state.get().inHand().number();
            ask.accept(() -> onwards.apply(session.answers().give(step, answered.answer())));
        } else if (meaning instanceof Meaning.Sense sense) {
            ask.accept(() -> session.gauge().tellSense(sense.rises()));
        } else if (meaning instanceof Meaning.SenseInFigures figures) {
            ask.accept(() -> session.gauge().confirmSense(figures.so()));
        } else if (meaning instanceof Meaning.GaugeMark gauge) {
            ask.accept(() -> session.gauge().choose(gauge.mark()));
        } else if (meaning instanceof Meaning.SetAsBefore) {
            ask.accept(session.gauge()::setAsBefore);
        } else if (meaning instanceof Meaning.SetOtherwise otherwise) {
            ask.accept(() -> session.gauge().setOtherwise(otherwise.sameSize()));
        } else if (meaning instanceof Meaning.Counts counts) {
            ask.accept(() -> session.machine(
                    counts.register(), state.get().sheet().run().usualAim().orElse(Aim.ByLimits.MIDDLE)));
        } else if (meaning instanceof Meaning.TakenUp) {
            ask.accept(session.shelf()::takeUp);
        } else if (meaning instanceof Meaning.Documents) {
            navigator.documents(session);
        } else if (meaning instanceof Meaning.CutOnThese) {
            navigator.form(Deed.CUT_ON_THESE, session);
        } else if (meaning instanceof Meaning.CutTaken) {
            ask.accept(() -> session.again(Why.CUT));
        } else if (meaning instanceof Meaning.Sweep sweep) {
            ask.accept(() -> session.turn().sweep(sweep.on()));
        } else if (meaning instanceof Meaning.Moved) {
            ask.accept(() -> session.again(Why.MOVED));
        } else if (meaning instanceof Meaning.StoodElsewhere) {
            navigator.form(Deed.STOOD_ELSEWHERE, session);
        } else if (meaning instanceof Meaning.ReadingsFirst first) {
            ask.accept(() -> session.readingsFirst(first.on()));
        }
    }
}
