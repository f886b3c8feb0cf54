package org.tenthwise.app.session;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.StepEvent;

/**
 * What can be done with the turn of a run-out in hand: which way it is read, and a first reading put to the place it
 * was taken at. As with the verbs of the run, one that is not taken says why and changes nothing.
 */
public final class TurnVerbs {

    private final RunSession session;
    private final RunBook book;
    private final WayOfReading way;

    TurnVerbs(RunSession session, RunBook book, WayOfReading way) {
        this.session = session;
        this.book = book;
        this.way = way;
    }

    /** What is asked next is the highest and the lowest over a full turn, or the readings by angle. */
    public Reply sweep(boolean wanted) {
        Optional<Objection> against =
                unwanted(order().filter(order -> order.canTurnTo(wanted)).isEmpty());
        if (against.isEmpty()) {
            way.sweep(wanted);
        }
        return session.replied(against);
    }

    /**
     * The one reading by angle so far was taken at another place: it is struck out there and kept here, both or
     * neither. What is asked next follows on from it.
     *
     * @param slot key of the place
     */
    public Reply stoodAt(String slot, String reason) throws CouldNotSave {
        State state = session.state();
        Optional<Objection> against = Objection.where(reason.isBlank(), Objection.Kind.BLANK)
                .or(() -> unwanted(state.otherPlaces().stream()
                        .noneMatch(place -> place.key().equals(slot))));
        if (against.isEmpty()) {
            Pass.Reading read = state.movable().orElseThrow().reading();
            book.add(book.happening(List.of(
                    new Event.StruckOut(read.entry().seq(), reason.strip()),
                    new StepEvent.ReadingTaken(state.inHand().number(), slot, read.typed()))));
        }
        return session.replied(against);
    }

    private Optional<RunOutOrder> order() {
        return session.state().line().finding().asTurn().map(RunOutOrder::new);
    }

    private Optional<Objection> unwanted(boolean raised) {
        return session.shut().or(() -> Objection.where(raised, Objection.Kind.NOT_ASKED_HERE));
    }
}
