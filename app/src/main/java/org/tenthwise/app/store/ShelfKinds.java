package org.tenthwise.app.store;

import org.tenthwise.model.run.Event;

/** The kinds of events by which a run is put away and taken up again. */
final class ShelfKinds {

    static final EventKind<Event.PutAway> PUT_AWAY = new EventKind<>(
            "put-away",
            5,
            Event.PutAway.class,
            (away, to) -> to.put("put-away-by", away.putAwayBy()).put("reason", away.reason()),
            from -> new Event.PutAway(from.text("put-away-by"), from.text("reason")));

    static final EventKind<Event.TakenUp> TAKEN_UP =
            new EventKind<>("taken-up", 6, Event.TakenUp.class, (up, to) -> {}, from -> new Event.TakenUp());

    private ShelfKinds() {}
}
