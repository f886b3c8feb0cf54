package org.tenthwise.app.session;

import java.util.Optional;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.model.run.Event;

/**
 * A run put away, and taken up again. As with the verbs of the run, one that is not taken says why and changes nothing.
 */
public final class ShelfVerbs {

    private final RunSession session;
    private final MachineAtHand machine;

    ShelfVerbs(RunSession session, MachineAtHand machine) {
        this.session = session;
        this.machine = machine;
    }

    /**
     * The run goes out of the open ones with all that was read in it, neither closed nor accepted; what is scrapped is
     * closed.
     */
    public Reply putAway(String by, String reason) throws CouldNotSave {
        Optional<Objection> against = Signing.inName(by)
                .or(() -> Signing.inReason(reason))
                .or(() -> Objection.where(by.isBlank() || reason.isBlank(), Objection.Kind.BLANK))
                .or(session::closed)
                .or(() -> Objection.where(session.state().sheet().scrapped(), Objection.Kind.SCRAPPED));
        return against.isPresent()
                ? session.replied(against)
                : session.kept(new Event.PutAway(by.strip(), reason.strip()));
    }

    /** It is gone on with. */
    public Reply takeUp() throws CouldNotSave {
        boolean away = session.closed()
                .filter(why -> why.kind() == Objection.Kind.PUT_AWAY)
                .isPresent();
        if (!away) {
            return session.replied(session.closed().or(() -> Optional.of(Objection.of(Objection.Kind.NOT_ASKED_HERE))));
        }
        machine.takeUp();
        return session.replied(Optional.empty());
    }
}
