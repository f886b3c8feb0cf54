package org.tenthwise.app.picture;

import org.tenthwise.model.words.Word;

/** What a colour is for. Its value is the palette's business. */
public enum Role {

    /** Ground of side columns, header and foot. */
    PAPER,
    /** Ground of the step in hand, of drawings and of keys. */
    SHEET,
    /** The tolerance itself. */
    ZONE,
    /** A key while pressed. */
    PRESSED,
    /** Text, figures, thick outlines, limits. */
    INK,
    /** Second text, open steps, fine ticks. */
    INK2,
    /** Outlines, dimension and centre lines. */
    LINE,
    /** Cut metal; never text. */
    HATCH,
    /** Rules between rows and columns; never text. */
    RULE,
    /** In hand now. */
    ACCENT,
    /** Ground of the commit key and of what moves in. */
    ACCENTFILL,
    /** Text on {@link #ACCENTFILL}. */
    ONACCENT,
    /** Ground of the key that flags a doubt. */
    STOP,
    /** Text on {@link #STOP}. */
    ONSTOP,
    /** Pass: word and disc. */
    PASS,
    /** Fail: word and barred square. */
    FAIL,
    /** Cut again: word and the arrow of the move. */
    CUT,
    /** Cut again: shape, hatch of the stock left; never text. */
    CUTFILL,
    /** Unproven: word, half disc, guard band. */
    UNPROVEN,
    /** Open: the ring; never text. */
    OPEN;

    /** The looked-up colour of the theme: {@code -accentfill}. */
    public String css() {
        return "-" + Word.of(this);
    }
}
