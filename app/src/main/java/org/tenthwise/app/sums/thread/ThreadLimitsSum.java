package org.tenthwise.app.sums.thread;

import java.util.Optional;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.thread.limits.LimitsRemark;
import org.tenthwise.model.compute.thread.limits.ThreadLimits;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.thread.ThreadSide;

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
            .on(
                    "ASME B1.1, formulas of tolerances, allowance and minor diameter; rounding ASME B1.30",
                    "ISO 965-1, tables of deviations and tolerances; basic sizes ISO 724",
                    "ASME B1.5, formulas of tolerances and table of allowances",
                    "ASME B1.8, allowances and tolerances as class 2G of ASME B1.5; crest and minor tolerances from "
                            + "memory of the standard",
                    "ISO 2903, tables of deviations and tolerances; basic sizes ISO 2904");

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
        SumResult.Writing answer = writer.answer.put(STANDING, limits.standing().key());
        limits.remarks()
                .forEach(remark ->
                        answer.note(sentence(remark, designation.thread().form())));
        return answer.on(DESCRIPTION.basis().get(designation.thread().form().ordinal()));
    }

    /** In the standard's own unit to the places it prints; in the other unit exactly what those places say. */
    private record Writer(Unit unit, ThreadLimits limits, SumResult.Writing answer) {

        Writer(Unit unit, ThreadLimits limits) {
            this(unit, limits, DESCRIPTION.in(unit));
        }

        void put(Output<Length> output, Optional<Length> length) {
            length.ifPresent(found -> {
                if (unit == limits.unit()) {
                    answer.put(output, found, limits.places());
                } else {
                    answer.put(output, found);
                }
            });
        }
    }

    private static String sentence(LimitsRemark remark, ThreadForm form) {
        return switch (remark) {
            case NOT_IN_SERIES ->
                ("%s does not list this diameter with this pitch: the limits are a proposal; confirm them from the "
                                + "drawing")
                        .formatted(series(form));
            case CLASS_NOT_LISTED ->
                form == ThreadForm.UNIFIED
                        ? "ASME B1.1 lists classes 1A and 1B for UNC and UNF from 1/4 in on: the limits are a "
                                + "proposal; confirm them from the drawing"
                        : "ASME B1.8 has class 2G; classes 3G and 4G are borrowed from ASME B1.5: the limits are a "
                                + "proposal; confirm them from the drawing";
            case AS_FOR_ONE_START ->
                "The limits are those of a single-start thread of this pitch, a proposal; confirm them from the "
                        + "drawing";
            case WIDENED_FOR_STARTS ->
                "The tolerance of the pitch diameter is larger for several starts by a factor of ISO 2903, from "
                        + "memory of the standard; check it against the standard";
            case ENGAGED_ONE_DIAMETER -> "Tolerances are for a length of engagement of one diameter";
            case ENGAGED_NINE_PITCHES -> "Tolerances are for a length of engagement of nine pitches";
            case MINOR_FOR_REFERENCE ->
                "minor_max is the rounded-root (UNR) minor diameter, for reference; ASME B1.1 sets no least one";
            case MINOR_FLAT_AND_ROUNDED ->
                "minor_max is the basic minor diameter less the deviation, for a flat root; minor_min is for a "
                        + "rounded root, pitch_min less 0.616025 pitches";
            case RECALLED -> recalled(form);
        };
    }

    private static String recalled(ThreadForm form) {
        return switch (form) {
            case ACME -> "major_max of the nut is from memory of ASME B1.5 and was not checked against a printed table";
            case STUB_ACME ->
                "The limits are from memory of ASME B1.8 and were not checked against a printed table of limits: "
                        + "compare one size before a part depends on them";
            default ->
                ("Deviations and tolerances are from memory of %s; only class 7e up to a pitch of 7 mm was checked "
                                + "against printed limits")
                        .formatted(form.limitsStandard());
        };
    }

    private static String series(ThreadForm form) {
        return switch (form) {
            case UNIFIED -> "ASME B1.1";
            case METRIC -> "ISO 261";
            case ACME -> "ASME B1.5";
            case STUB_ACME -> "ASME B1.8";
            case TRAPEZOIDAL -> "ISO 2904";
        };
    }
}
