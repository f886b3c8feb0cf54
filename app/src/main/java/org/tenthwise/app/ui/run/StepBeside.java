package org.tenthwise.app.ui.run;

/** Which step stands beside the one in hand: that which comes next, until another is looked for; never itself. */
final class StepBeside {

    private int steps;
    private int inHand = -1;
    private int place;

    /** @param now place of the step in hand among all of them */
    void show(int all, int now) {
        steps = all;
        if (now != inHand) {
            inHand = now;
            place = now + 1 < all ? now + 1 : now - 1;
        }
    }

    /** Whether there is no other step. */
    boolean isNone() {
        return steps < 2;
    }

    int place() {
        return place;
    }

    boolean hasEarlier() {
        return next(-1) >= 0;
    }

    boolean hasLater() {
        return next(1) < steps;
    }

    /** @param way -1 to the one before, 1 to the one behind; past the ends nothing happens */
    void turn(int way) {
        int next = next(way);
        place = next < 0 || next >= steps ? place : next;
    }

    private int next(int way) {
        int next = place + way;
        return next == inHand ? next + way : next;
    }
}
