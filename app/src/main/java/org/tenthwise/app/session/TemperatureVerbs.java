package org.tenthwise.app.session;

import java.util.Optional;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.record.TemperatureEffect;
import org.tenthwise.model.run.StepEvent;

/**
 * Takes temperatures for the pass in hand, where they are needed; they need not be asked for yet, and one taken before
 * is replaced. As with the verbs of the run, one that is not taken says why and changes nothing.
 */
public final class TemperatureVerbs {

    private final RunSession session;

    TemperatureVerbs(RunSession session) {
        this.session = session;
    }

    /** One that is far off is not taken: {@link #keep} does that. */
    public Reply take(MeasuredBody of, String text) throws CouldNotSave {
        return take(of, text, false);
    }

    /** Takes one on purpose although it is far off; in everything else as {@link #take}. */
    public Reply keep(MeasuredBody of, String text) throws CouldNotSave {
        return take(of, text, true);
    }

    /** @param onPurpose whether it is taken although it is far off */
    Reply take(MeasuredBody of, String text, boolean onPurpose) throws CouldNotSave {
        State state = session.state();
        Optional<TemperatureEffect> needed = state.line().finding().warmth().filter(TemperatureEffect::needed);
        Optional<Objection> unwanted =
                session.shut().or(() -> Objection.where(needed.isEmpty(), Objection.Kind.NOT_ASKED_HERE));
        Optional<Objection> against = unwanted.or(() -> Objection.standing(
                Thermometer.objection(text, needed.orElseThrow().climate()), onPurpose));
        return against.isPresent()
                ? session.replied(against)
                : session.kept(new StepEvent.TemperatureTaken(
                        state.inHand().number(),
                        of,
                        Degrees.of(text, needed.orElseThrow().climate().scale())));
    }
}
