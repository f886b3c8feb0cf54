package org.tenthwise.app.ui.run;

/**
 * Which of the rows of a list are in sight, as many as find room: the one in hand with the next one, until the list is
 * turned on by hand. Rows are counted from 0.
 */
final class RowsInSight {

    /** How many rows before the one in hand are in sight where the list had to be turned to it. */
    private static final int BEFORE = 2;

    private int all;
    private int inHand = -1;
    private int first;
    private int number;
    private boolean sought;

    /** @param inHand stays in sight when another is, or when the list finds other room */
    void show(int all, int inHand) {
        this.all = all;
        if (inHand != this.inHand) {
            this.inHand = inHand;
            sought = true;
        }
    }

    /**
     * As many rows find room; at least one and at most all. Stays where it is if the row in hand is to be seen there.
     */
    void fit(int room) {
        int now = Math.max(1, Math.min(all, room));
        boolean seeks = sought || now != number;
        number = now;
        sought = false;
        int next = Math.min(inHand + 1, all - 1);
        if (seeks && (inHand < first || next >= first + number)) {
            first = inHand - Math.min(BEFORE, Math.max(0, number - 2));
        }
        first = within(first);
    }

    /** To the rows after those in sight, or with -1 to those before. */
    void turn(int way) {
        first = within(first + way * Math.max(1, number));
    }

    private int within(int row) {
        return Math.max(0, Math.min(row, all - number));
    }

    int first() {
        return first;
    }

    int number() {
        return number;
    }

    boolean isAtTheFirst() {
        return first == 0;
    }

    boolean isAtTheLast() {
        return first + number >= all;
    }
}
