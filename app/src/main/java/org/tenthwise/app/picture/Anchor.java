package org.tenthwise.app.picture;

/** Which spot of a text is put where: its share of the width, and of the height of its capitals from the top. */
public enum Anchor {
    LEFT(0, 0.5),
    CENTRE(0.5, 0.5),
    RIGHT(1, 0.5),
    /** Above the spot. */
    ABOVE(0.5, 1),
    /** Below the spot. */
    LEFT_BELOW(0, 0),
    RIGHT_BELOW(1, 0);

    final double across;
    final double down;

    Anchor(double across, double down) {
        this.across = across;
        this.down = down;
    }
}
