package org.tenthwise.checklists.rules;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.tenthwise.model.gauge.Calibration;

/** By what certificate something of a readings file was calibrated, and until when; both may be left out. */
final class SampleCalibration {

    private static final String CERTIFICATE = "certificate";
    private static final String DUE = "due";

    private SampleCalibration() {}

    static Calibration read(TableKeys keys) {
        Optional<String> certificate = keys.ifAny(CERTIFICATE, keys::text);
        Optional<LocalDate> due = keys.ifAny(DUE, key -> keys.text(key).flatMap(text -> day(keys, text)));
        return new Calibration(certificate.orElse(""), due);
    }

    private static Optional<LocalDate> day(TableKeys keys, String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            keys.problem(DUE, "readings.document.dated", text);
            return Optional.empty();
        }
    }
}
