package org.tenthwise.app.sums.thread;

import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.sums.Sum;
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
final class ThreadLimitsSum implements Sum {

    @Override
    public String name() {
        return "thread-limits";
    }

    @Override
    public Set<String> keys() {
        return DesignationInputs.KEYS;
    }

    @Override
    public SumResult of(SumInput given) {
        ThreadDesignation designation = DesignationInputs.designation(given);
        ThreadLimits limits = DesignationInputs.limits(designation);
        boolean external =
                designation.side().filter(side -> side == ThreadSide.EXTERNAL).isPresent();
        Writer writer = new Writer(given.unit().orElse(limits.unit()), limits);
        writer.put("major_max", limits.majorMax());
        writer.put("major_min", limits.majorMin());
        writer.put("pitch_max", Optional.of(limits.pitchMax()));
        writer.put("pitch_min", Optional.of(limits.pitchMin()));
        writer.put("minor_max", limits.minorMax());
        writer.put("minor_min", limits.minorMin());
        writer.put("allowance", Optional.of(limits.allowance()));
        writer.put("pitch_tolerance", Optional.of(limits.pitchTolerance()));
        writer.put("major_tolerance", external ? limits.majorTolerance() : Optional.empty());
        writer.put("minor_tolerance", external ? Optional.empty() : limits.minorTolerance());
        writer.put("pitch_basic", Optional.of(designation.thread().basicPitchDiameter()));
        writer.put("minor_basic", Optional.of(designation.thread().basicMinorDiameter()));
        SumResult.Writing answer =
                writer.answer.word("standing", limits.standing().key());
        limits.remarks()
                .forEach(remark ->
                        answer.note(sentence(remark, designation.thread().form())));
        return answer.on(basis(designation.thread().form()));
    }

    /** In the standard's own unit to the places it prints; in the other unit exactly what those places say. */
    private record Writer(Unit unit, ThreadLimits limits, SumResult.Writing answer) {

        Writer(Unit unit, ThreadLimits limits) {
            this(unit, limits, SumResult.in(unit));
        }

        void put(String key, Optional<Length> length) {
            length.ifPresent(found -> {
                if (unit == limits.unit()) {
                    answer.length(key, found, limits.places());
                } else {
                    answer.length(key, found);
                }
            });
        }
    }

    private static String basis(ThreadForm form) {
        return switch (form) {
            case UNIFIED -> "ASME B1.1, formulas of tolerances, allowance and minor diameter; rounding ASME B1.30";
            case METRIC -> "ISO 965-1, tables of deviations and tolerances; basic sizes ISO 724";
            case ACME -> "ASME B1.5, formulas of tolerances and table of allowances";
            case STUB_ACME ->
                "ASME B1.8, allowances and tolerances as class 2G of ASME B1.5; crest and minor tolerances from "
                        + "memory of the standard";
            case TRAPEZOIDAL -> "ISO 2903, tables of deviations and tolerances; basic sizes ISO 2904";
        };
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
