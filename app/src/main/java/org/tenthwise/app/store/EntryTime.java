package org.tenthwise.app.store;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;

/**
 * The time of an entry as its text has it: ISO 8601, with the offset from UTC.
 *
 * <p>The usual form, {@code 2026-11-25T07:31:12.5+01:00}, is read figure by figure: going the general way took a
 * seventh of the time of verifying a store. Any other form does go it.
 */
final class EntryTime {

    private static final int FRACTION = 19;
    private static final int NANO_FIGURES = 9;
    private static final int NONE = -1;

    private EntryTime() {}

    /** @throws DateTimeException if it is no time, or a day or an hour that there is not */
    static OffsetDateTime read(String text) {
        int zone = text.endsWith("Z") ? text.length() - 1 : text.length() - "+00:00".length();
        int nanos = zone == FRACTION ? 0 : zone > FRACTION + 1 ? nanos(text, zone) : NONE;
        int seconds = nanos == NONE ? NONE : offsetSeconds(text, zone);
        boolean usual = seconds != NONE
                && text.charAt(4) == '-'
                && text.charAt(7) == '-'
                && text.charAt(10) == 'T'
                && text.charAt(13) == ':'
                && text.charAt(16) == ':';
        int[] parts = new int[6];
        for (int i = 0; usual && i < parts.length; i++) {
            int from = i == 0 ? 0 : 2 + 3 * i;
            parts[i] = figure(text, from, i == 0 ? 4 : from + 2);
            usual = parts[i] != NONE;
        }
        return usual
                ? OffsetDateTime.of(
                        parts[0],
                        parts[1],
                        parts[2],
                        parts[3],
                        parts[4],
                        parts[5],
                        nanos,
                        ZoneOffset.ofTotalSeconds(text.charAt(zone) == '-' ? -seconds : seconds))
                : OffsetDateTime.parse(text, DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }

    private static int nanos(String text, int zone) {
        int figures = zone - FRACTION - 1;
        int fraction =
                text.charAt(FRACTION) == '.' && figures <= NANO_FIGURES ? figure(text, FRACTION + 1, zone) : NONE;
        for (int i = figures; fraction != NONE && i < NANO_FIGURES; i++) {
            fraction *= 10;
        }
        return fraction;
    }

    /** Without its sign. */
    private static int offsetSeconds(String text, int zone) {
        if (zone == text.length() - 1) {
            return 0;
        }
        char sign = text.charAt(zone);
        int hours = figure(text, zone + 1, zone + 3);
        int minutes = figure(text, zone + 4, zone + 6);
        boolean usual = (sign == '+' || sign == '-')
                && text.charAt(zone + 3) == ':'
                && hours != NONE
                && minutes >= 0
                && minutes < 60;
        return usual ? (60 * hours + minutes) * 60 : NONE;
    }

    /** Of plain figures only. */
    private static int figure(String text, int from, int to) {
        int figure = 0;
        for (int i = from; i < to; i++) {
            char sign = text.charAt(i);
            if (sign < '0' || sign > '9') {
                return NONE;
            }
            figure = 10 * figure + sign - '0';
        }
        return figure;
    }
}
