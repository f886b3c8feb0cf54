package org.tenthwise.app.session;

import java.util.Optional;

/** The figure doubted last: entering the same again insists on it. */
final class Insistence {

    private Optional<String> doubted = Optional.empty();

    /** What is left of an objection when the same was entered before: one that may be insisted on is gone then. */
    Optional<Objection> standing(Optional<Objection> objection, String text) {
        return objection.filter(raised -> !(raised.kind().mayInsist() && insistedOn(text)));
    }

    private boolean insistedOn(String text) {
        boolean insisted = doubted.filter(text::equals).isPresent();
        doubted = Optional.of(text);
        return insisted;
    }

    void forget() {
        doubted = Optional.empty();
    }
}
