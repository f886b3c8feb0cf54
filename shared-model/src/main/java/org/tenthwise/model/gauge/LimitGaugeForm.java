package org.tenthwise.model.gauge;

import org.tenthwise.model.words.Word;

/** What a limit gauge looks like, and on which side of the metal it gauges. */
public enum LimitGaugeForm {
    PLUG(true),
    RING(false),
    SNAP(false),
    THREAD_PLUG(true),
    THREAD_RING(false),
    /** Two leaves of a radius gauge, the greatest and the least radius. */
    RADIUS_LEAF(false),
    TEMPLATE(false);

    private final boolean inside;

    LimitGaugeForm(boolean inside) {
        this.inside = inside;
    }

    /** How plan files name it. */
    public String key() {
        return Word.of(this);
    }

    /** Whether it goes into the work. */
    public boolean isInside() {
        return inside;
    }

    /** Whether its two ends are sizes with a certificate. */
    public boolean hasSizes() {
        return this != RADIUS_LEAF && this != TEMPLATE;
    }
}
