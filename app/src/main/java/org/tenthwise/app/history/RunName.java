package org.tenthwise.app.history;

import java.util.Optional;

/**
 * What a run goes by in a store: as its own store calls it, and for one that came in from elsewhere with the sign of
 * its origin behind, {@code LG-2207-C-013@3f9c0a1b}. So runs of two stations that call theirs alike never mix. What is
 * written of a run, its record and its entries, says its own name alone.
 *
 * @param run as its own store calls it
 * @param origin sign of where it was made; absent for a run of this store
 */
public record RunName(String run, Optional<String> origin) {

    private static final char FROM = '@';

    /** @param id as lists, commands and screens hand it on */
    public static RunName of(String id) {
        int from = id.lastIndexOf(FROM);
        return from < 0
                ? new RunName(id, Optional.empty())
                : new RunName(id.substring(0, from), Optional.of(id.substring(from + 1)));
    }

    /** The name of a run that came in. */
    public static String imported(String run, String sign) {
        return run + FROM + sign;
    }

    /** What a run goes by that another of the same station names. */
    public String beside(String other) {
        return origin.map(sign -> imported(other, sign)).orElse(other);
    }

    /** Whether it was made elsewhere: nothing is added to it here. */
    public boolean isImported() {
        return origin.isPresent();
    }
}
