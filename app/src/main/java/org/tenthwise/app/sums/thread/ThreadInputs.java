package org.tenthwise.app.sums.thread;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.compute.thread.Groove;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.thread.ThreadForm;

/** A thread as the sums over wires are given it: a form by name, or one with flanks of its own. */
record ThreadInputs(ThreadForm form, Groove groove) {

    /** Keys of a form and its pitch. */
    static final Set<String> KEYS = Set.of("form", "pitch", "tpi", "starts", "half_angle", "groove_width");

    private static final int MOST_STARTS = 60;
    private static final BigDecimal RIGHT_ANGLE = BigDecimal.valueOf(90);

    static ThreadInputs of(SumInput given) {
        ThreadForm form = given.choice("form", DesignationInputs.FORMS);
        return new ThreadInputs(form, groove(given, form));
    }

    /** The form, for what only a crest can tell; absent where flanks of its own are all that is said. */
    static Optional<ThreadForm> form(SumInput given) {
        if (!given.has("form") && !given.has("half_angle")) {
            throw new CannotAnswer("form", "form is missing: give form, or half_angle");
        }
        return given.ifGiven("form", key -> given.choice(key, DesignationInputs.FORMS));
    }

    /** The groove alone, of a form or with a half angle that is typed; a typed one goes before the form's. */
    static Groove groove(SumInput given) {
        Optional<ThreadForm> form = form(given);
        return form.isPresent() ? groove(given, form.get()) : groove(given, halfAngle(given));
    }

    private static Groove groove(SumInput given, ThreadForm form) {
        return groove(given, given.has("half_angle") ? halfAngle(given) : BigDecimal.valueOf(form.halfAngleDegrees()));
    }

    private static Groove groove(SumInput given, BigDecimal halfAngle) {
        Length pitch = DesignationInputs.pitch(given);
        int starts =
                given.ifGiven("starts", key -> given.whole(key, 1, MOST_STARTS)).orElse(1);
        return new Groove(
                halfAngle,
                pitch,
                given.ifGiven("groove_width", given::positiveLength).orElse(pitch.half()),
                starts);
    }

    private static BigDecimal halfAngle(SumInput given) {
        BigDecimal angle = given.positive("half_angle");
        if (angle.compareTo(RIGHT_ANGLE) >= 0) {
            throw new CannotAnswer(
                    "half_angle", "half_angle is %s: it must be less than 90 degrees".formatted(angle.toPlainString()));
        }
        return angle;
    }
}
