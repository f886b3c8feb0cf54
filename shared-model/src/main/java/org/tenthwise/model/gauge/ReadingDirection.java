package org.tenthwise.model.gauge;

/**
 * Which way a comparing gauge's number goes as the size grows. A property of the gauge, asked once: the plunger of a
 * bore gauge is pressed in by a <em>smaller</em> bore, so a dial whose number rises on a pressed plunger falls with
 * size.
 */
public enum ReadingDirection {
    RISES_WITH_SIZE(1),
    FALLS_WITH_SIZE(-1);

    private final int sign;

    ReadingDirection(int sign) {
        this.sign = sign;
    }

    /** +1 or −1: what a reading less its zero is multiplied by. */
    public int sign() {
        return sign;
    }

    public ReadingDirection opposite() {
        return this == RISES_WITH_SIZE ? FALLS_WITH_SIZE : RISES_WITH_SIZE;
    }
}
