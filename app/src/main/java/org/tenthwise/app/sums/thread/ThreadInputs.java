package org.tenthwise.app.sums.thread;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.compute.thread.Groove;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.thread.ThreadForm;

/** A thread as the sums over wires are given it: a form by name, or one with flanks of its own. */
record ThreadInputs(ThreadForm form, Groove groove) {

    private static final BigDecimal RIGHT_ANGLE = BigDecimal.valueOf(90);

    static final Input<BigDecimal> HALF_ANGLE =
            Input.positive("half_angle").in(Quantity.ANGLE).optional();
    static final Input<Length> GROOVE_WIDTH =
            Input.positiveLength("groove_width").optional();

    static ThreadInputs of(SumInput given) {
        ThreadForm form = given.get(DesignationInputs.FORM);
        return new ThreadInputs(form, groove(given, form));
    }

    /** The form, for what only a crest can tell; absent where flanks of its own are all that is said. */
    static Optional<ThreadForm> form(SumInput given) {
        if (!given.has(DesignationInputs.FORM) && !given.has(HALF_ANGLE)) {
            throw new CannotAnswer(DesignationInputs.FORM, "missing");
        }
        return given.find(DesignationInputs.FORM);
    }

    /** The groove alone, of a form or with a half angle that is typed; a typed one goes before the form's. */
    static Groove groove(SumInput given) {
        Optional<ThreadForm> form = form(given);
        return form.isPresent() ? groove(given, form.get()) : groove(given, halfAngle(given));
    }

    private static Groove groove(SumInput given, ThreadForm form) {
        return groove(given, given.has(HALF_ANGLE) ? halfAngle(given) : BigDecimal.valueOf(form.halfAngleDegrees()));
    }

    private static Groove groove(SumInput given, BigDecimal halfAngle) {
        Length pitch = DesignationInputs.pitch(given);
        int starts = given.find(DesignationInputs.STARTS).orElse(1);
        return new Groove(halfAngle, pitch, given.find(GROOVE_WIDTH).orElse(pitch.half()), starts);
    }

    private static BigDecimal halfAngle(SumInput given) {
        BigDecimal angle = given.get(HALF_ANGLE);
        if (angle.compareTo(RIGHT_ANGLE) >= 0) {
            throw new CannotAnswer(HALF_ANGLE, "too-large", angle);
        }
        return angle;
    }
}
