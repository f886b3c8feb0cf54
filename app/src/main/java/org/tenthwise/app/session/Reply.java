package org.tenthwise.app.session;

import java.util.Optional;

/**
 * What became of something typed or tapped.
 *
 * @param state the run after it
 * @param objection why it was not taken; absent when it is on the disk
 */
public record Reply(State state, Optional<Objection> objection) {

    static Reply taken(State state) {
        return new Reply(state, Optional.empty());
    }

    static Reply refused(State state, Objection objection) {
        return new Reply(state, Optional.of(objection));
    }
}
