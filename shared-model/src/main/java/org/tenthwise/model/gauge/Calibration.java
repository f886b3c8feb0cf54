package org.tenthwise.model.gauge;

import java.time.LocalDate;
import java.util.Optional;

/**
 * By what certificate something was calibrated, and until when that holds, as somebody read it off.
 *
 * @param certificate its number; empty where nobody said it
 * @param due the last day it is in date; absent where nobody said it
 */
public record Calibration(String certificate, Optional<LocalDate> due) {

    public static final Calibration NOT_STATED = new Calibration("", Optional.empty());

    public Calibration {
        certificate = certificate.strip();
    }

    public boolean isStated() {
        return !equals(NOT_STATED);
    }

    /** Whether it is over on that day; on the due day itself it still holds, and where none is said nobody can tell. */
    public boolean isPastOn(LocalDate day) {
        return due.filter(day::isAfter).isPresent();
    }
}
