package org.tenthwise.app.sums.thread;

import java.util.Optional;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.thread.limits.ThreadLimits;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.thread.ThreadSide;
import org.tenthwise.model.words.Message;

/** {@code thread-limits}: limits of size of one side of a screw thread. */
public final class ThreadLimitsSum implements Sum {

    public static final String NAME = "thread-limits";
    public static final Output<Length> MAJOR_MAX = Output.length("major_max").sometimes();
    public static final Output<Length> MAJOR_MIN = Output.length("major_min");
    public static final Output<Length> PITCH_MAX = Output.length("pitch_max");
    public static final Output<Length> PITCH_MIN = Output.length("pitch_min");
    public static final Output<Length> MINOR_MAX = Output.length("minor_max");
    public static final Output<Length> MINOR_MIN = Output.length("minor_min").sometimes();
    public static final Output<Length> ALLOWANCE = Output.length("allowance");
    public static final Output<Length> PITCH_TOLERANCE = Output.length("pitch_tolerance");
    public static final Output<Length> MAJOR_TOLERANCE =
            Output.length("major_tolerance").sometimes();
    public static final Output<Length> MINOR_TOLERANCE =
            Output.length("minor_tolerance").sometimes();
    public static final Output<Length> PITCH_BASIC = Output.length("pitch_basic");
    public static final Output<Length> MINOR_BASIC = Output.length("minor_basic");
    public static final Output<String> STANDING = Output.word("standing", "table", "formula", "proposal");
    /** By the form, in the order of {@link ThreadForm}. */
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(
                    DesignationInputs.DESIGNATION,
                    DesignationInputs.FORM.optional(),
                    DesignationInputs.DIAMETER.optional())
            .takesOneOf(DesignationInputs.PITCH, DesignationInputs.TPI)
            .takes(
                    DesignationInputs.CLASS.optional(),
                    DesignationInputs.STARTS,
                    DesignationInputs.SERIES,
                    DesignationInputs.SIDE)
            .gives(
                    MAJOR_MAX,
                    MAJOR_MIN,
                    PITCH_MAX,
                    PITCH_MIN,
                    MINOR_MAX,
                    MINOR_MIN,
                    ALLOWANCE,
                    PITCH_TOLERANCE,
                    MAJOR_TOLERANCE,
                    MINOR_TOLERANCE,
                    PITCH_BASIC,
                    MINOR_BASIC,
                    STANDING)
            .on("unified", "metric", "acme", "stub-acme", "trapezoidal");

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        ThreadDesignation designation = DesignationInputs.designation(given);
        ThreadLimits limits = DesignationInputs.limits(designation);
        boolean external =
                designation.side().filter(side -> side == ThreadSide.EXTERNAL).isPresent();
        Writer writer = new Writer(given.unit().orElse(limits.unit()), limits);
        writer.put(MAJOR_MAX, limits.majorMax());
        writer.put(MAJOR_MIN, limits.majorMin());
        writer.put(PITCH_MAX, Optional.of(limits.pitchMax()));
        writer.put(PITCH_MIN, Optional.of(limits.pitchMin()));
        writer.put(MINOR_MAX, limits.minorMax());
        writer.put(MINOR_MIN, limits.minorMin());
        writer.put(ALLOWANCE, Optional.of(limits.allowance()));
        writer.put(PITCH_TOLERANCE, Optional.of(limits.pitchTolerance()));
        writer.put(MAJOR_TOLERANCE, external ? limits.majorTolerance() : Optional.empty());
        writer.put(MINOR_TOLERANCE, external ? Optional.empty() : limits.minorTolerance());
        writer.put(PITCH_BASIC, Optional.of(designation.thread().basicPitchDiameter()));
        writer.put(MINOR_BASIC, Optional.of(designation.thread().basicMinorDiameter()));
        ThreadForm form = designation.thread().form();
        SumResult.Writing answer = writer.answer.put(STANDING, limits.standing().key());
        limits.remarks()
                .forEach(remark ->
                        answer.note(Message.ofValue("sum.thread-limits", remark, form, form.limitsStandard())));
        return answer.on(form.key());
    }

    /** In the standard's own unit to the places it prints; in the other unit exactly what those places say. */
    private record Writer(Unit unit, ThreadLimits limits, SumResult.Writing answer) {

        Writer(Unit unit, ThreadLimits limits) {
            this(unit, limits, DESCRIPTION.in(unit));
        }

        void put(Output<Length> output, Optional<Length> length) {
            length.ifPresent(found -> {
                if (unit.equals(limits.unit())) {
                    answer.put(output, found, limits.places());
                } else {
                    answer.put(output, found);
                }
            });
        }
    }
}
