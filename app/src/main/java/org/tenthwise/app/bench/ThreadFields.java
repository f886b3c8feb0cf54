package org.tenthwise.app.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.sums.thread.DesignationInputs;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadClass;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.thread.ThreadSide;

/** What names a thread, asked alike wherever a thread is asked for. */
final class ThreadFields {

    static final String PITCH_BY = "pitch_by";
    private static final int PLACES_OF_A_PITCH = 10;

    private ThreadFields() {}

    static FormField form(Unit unit) {
        return unit == Unit.INCH
                ? FormField.of(DesignationInputs.FORM)
                        .choosing(List.of("unified", "acme", "stub-acme", "metric", "trapezoidal"))
                : FormField.of(DesignationInputs.FORM)
                        .choosing(List.of("metric", "trapezoidal", "unified", "acme", "stub-acme"));
    }

    /** Pitch or threads to the inch, as is usual in the unit. */
    static FormField pitchBy(Unit unit) {
        String pitch = DesignationInputs.PITCH.key();
        String perInch = DesignationInputs.TPI.key();
        return unit == Unit.INCH
                ? FormField.ofTheForm(PITCH_BY, perInch, pitch)
                : FormField.ofTheForm(PITCH_BY, pitch, perInch);
    }

    static FormField pitch(FormValues filled) {
        return FormField.of(isPerInch(filled) ? DesignationInputs.TPI : DesignationInputs.PITCH)
                .ofADesignation();
    }

    private static boolean isPerInch(FormValues filled) {
        String by = filled.text(PITCH_BY);
        return by.isEmpty() ? filled.unit() == Unit.INCH : by.equals(DesignationInputs.TPI.key());
    }

    static FormField starts() {
        return FormField.of(DesignationInputs.STARTS);
    }

    /** The thread as filled in; absent while something of it is missing or makes no sense. */
    static Optional<ScrewThread> thread(FormValues filled) {
        try {
            return ThreadForm.ofKey(filled.text(DesignationInputs.FORM))
                    .flatMap(form -> filled.length(DesignationInputs.DIAMETER).flatMap(diameter -> pitchOf(filled)
                            .map(pitch -> new ScrewThread(
                                    form,
                                    diameter,
                                    pitch,
                                    filled.number(DesignationInputs.STARTS.key())
                                            .map(BigDecimal::intValue)
                                            .orElse(1)))));
        } catch (IllegalArgumentException noSuchThread) {
            return Optional.empty();
        }
    }

    private static Optional<Length> pitchOf(FormValues filled) {
        if (!isPerInch(filled)) {
            return filled.length(DesignationInputs.PITCH);
        }
        return filled.number(DesignationInputs.TPI.key())
                .filter(perInch -> perInch.signum() > 0)
                .map(perInch -> Length.of("1", Unit.INCH).dividedBy(perInch));
    }

    /** Fills in a thread the way it is usual in the unit. */
    static FormValues fill(FormValues filled, ScrewThread thread) {
        FormValues named = filled.with(DesignationInputs.FORM, thread.form().key())
                .with(DesignationInputs.DIAMETER, FormValues.typed(thread.diameter(), filled.unit()));
        FormValues started =
                thread.starts() > 1 ? named.with(DesignationInputs.STARTS, String.valueOf(thread.starts())) : named;
        BigDecimal perInch = BigDecimal.ONE
                .divide(thread.pitch().in(Unit.INCH), PLACES_OF_A_PITCH, RoundingMode.HALF_EVEN)
                .setScale(PLACES_OF_A_PITCH / 2, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        if (filled.unit() == Unit.INCH && perInch.scale() <= 0) {
            return started.with(PITCH_BY, DesignationInputs.TPI.key())
                    .with(DesignationInputs.TPI, perInch.toPlainString());
        }
        return started.with(PITCH_BY, DesignationInputs.PITCH.key())
                .with(DesignationInputs.PITCH, FormValues.typed(thread.pitch(), filled.unit()));
    }

    /** Classes a drawing often names for the form, on the side, and the one named already if there is such a class. */
    static List<String> classes(String form, boolean external, String named) {
        List<String> usual = usual(form, external);
        boolean other = !usual.contains(named)
                && ThreadForm.ofKey(form)
                        .filter(of -> isClass(of, external, named))
                        .isPresent();
        return other ? Stream.concat(usual.stream(), Stream.of(named)).toList() : usual;
    }

    private static boolean isClass(ThreadForm form, boolean external, String named) {
        try {
            return ThreadClass.of(form, named)
                    .side()
                    .map(side -> external == (side == ThreadSide.EXTERNAL))
                    .orElse(true);
        } catch (IllegalArgumentException noSuchClass) {
            return false;
        }
    }

    private static List<String> usual(String form, boolean external) {
        return List.of(
                switch (form) {
                    case "unified" -> external ? new String[] {"2A", "3A", "1A"} : new String[] {"2B", "3B", "1B"};
                    case "metric" ->
                        external
                                ? new String[] {"6g", "6h", "6e", "6f", "4g", "4h", "8g", "8e"}
                                : new String[] {"6H", "6G", "5H", "5G", "4H", "7H", "7G", "8H", "8G"};
                    case "trapezoidal" ->
                        external ? new String[] {"7e", "8e", "8c", "9c"} : new String[] {"7H", "8H", "9H"};
                    case "acme" -> new String[] {"2G", "3G", "4G"};
                    default -> new String[] {"2G"};
                });
    }
}
