package org.tenthwise.app.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadClass;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.thread.ThreadSide;

/** What names a thread, asked alike wherever a thread is asked for. */
final class ThreadFields {

    static final String FORM = "form";
    static final String DIAMETER = "diameter";
    static final String PITCH = "pitch";
    static final String PER_INCH = "tpi";
    static final String STARTS = "starts";
    static final String PITCH_BY = "pitch_by";
    private static final int PLACES_OF_A_PITCH = 10;

    private ThreadFields() {}

    static FormField form(Unit unit) {
        return unit == Unit.INCH
                ? FormField.choice(FORM, "unified", "acme", "stub-acme", "metric", "trapezoidal")
                : FormField.choice(FORM, "metric", "trapezoidal", "unified", "acme", "stub-acme");
    }

    /** Pitch or threads to the inch, as is usual in the unit. */
    static FormField pitchBy(Unit unit) {
        return (unit == Unit.INCH
                        ? FormField.choice(PITCH_BY, PER_INCH, PITCH)
                        : FormField.choice(PITCH_BY, PITCH, PER_INCH))
                .aside();
    }

    static FormField pitch(FormValues filled) {
        String by = filled.text(PITCH_BY);
        boolean perInch = by.equals(PER_INCH) || by.isEmpty() && filled.unit() == Unit.INCH;
        return perInch ? FormField.of(FormField.FieldKind.PER_INCH, PER_INCH) : FormField.length(PITCH);
    }

    static FormField starts() {
        return FormField.of(FormField.FieldKind.COUNT, STARTS).optional();
    }

    /** The thread as filled in; absent while something of it is missing or makes no sense. */
    static Optional<ScrewThread> thread(FormValues filled) {
        try {
            return ThreadForm.ofKey(filled.text(FORM))
                    .flatMap(form -> filled.length(DIAMETER).flatMap(diameter -> pitchOf(filled)
                            .map(pitch -> new ScrewThread(
                                    form,
                                    diameter,
                                    pitch,
                                    filled.number(STARTS)
                                            .map(BigDecimal::intValue)
                                            .orElse(1)))));
        } catch (IllegalArgumentException noSuchThread) {
            return Optional.empty();
        }
    }

    private static Optional<Length> pitchOf(FormValues filled) {
        if (pitch(filled).id().equals(PITCH)) {
            return filled.length(PITCH);
        }
        return filled.number(PER_INCH).filter(perInch -> perInch.signum() > 0).map(perInch -> Length.of("1", Unit.INCH)
                .dividedBy(perInch));
    }

    /** Fills in a thread the way it is usual in the unit. */
    static FormValues fill(FormValues filled, ScrewThread thread) {
        FormValues named = filled.with(FORM, thread.form().key())
                .with(DIAMETER, FormValues.typed(thread.diameter(), filled.unit()));
        FormValues started = thread.starts() > 1 ? named.with(STARTS, String.valueOf(thread.starts())) : named;
        BigDecimal perInch = BigDecimal.ONE
                .divide(thread.pitch().in(Unit.INCH), PLACES_OF_A_PITCH, RoundingMode.HALF_EVEN)
                .setScale(PLACES_OF_A_PITCH / 2, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        if (filled.unit() == Unit.INCH && perInch.scale() <= 0) {
            return started.with(PITCH_BY, PER_INCH).with(PER_INCH, perInch.toPlainString());
        }
        return started.with(PITCH_BY, PITCH).with(PITCH, FormValues.typed(thread.pitch(), filled.unit()));
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
