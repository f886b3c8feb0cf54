package org.tenthwise.app.bench;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SketchPicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.gear.OverPinsSum;
import org.tenthwise.app.sums.gear.ToothInputs;
import org.tenthwise.model.compute.gear.ToothSide;

/** Over or between two pins in the teeth of a gear or a spline. */
final class OverPinsForm implements BenchForm {

    private static final String BY = "thickness_by";

    @Override
    public BenchKind kind() {
        return BenchKind.OVER_PINS;
    }

    @Override
    public String sum() {
        return OverPinsSum.NAME;
    }

    /** A pin between two teeth. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 8, 50, 14, 50, 22, 18, 34, 18, 42, 50, 54, 50, 62, 18, 74, 18, 82, 50, 88, 50);
        sketch.ring(48, 34, 11);
        sketch.thin(Role.ACCENT, 30, 23, 66, 23);
    }

    private static boolean isInternal(FormValues filled) {
        return filled.is(OverPinsSum.SIDE, "internal");
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        List<FormField> fields = ToothFields.of(filled);
        fields.addAll(1, List.of(FormField.of(OverPinsSum.SIDE).called("tooth-side")));
        fields.add(FormField.of(OverPinsSum.PIN));
        fields.add(FormField.of(OverPinsSum.MEASURED).called(isInternal(filled) ? "pins-female" : "pins-male"));
        fields.add(FormField.of(ToothInputs.HELIX));
        fields.add(FormField.ofTheForm(BY, ToothInputs.SHIFT.key(), OverPinsSum.THICKNESS.key()));
        fields.add(
                filled.is(BY, OverPinsSum.THICKNESS.key())
                        ? FormField.of(OverPinsSum.THICKNESS).must().called("tooth-nominal")
                        : FormField.of(ToothInputs.SHIFT));
        return fields;
    }

    /** Where the teeth were measured, how thick they are; else what they measure. */
    @Override
    public List<Output<?>> first(FormValues filled) {
        return filled.isFinished(OverPinsSum.MEASURED.key())
                ? List.of(OverPinsSum.THICKNESS_FOUND, OverPinsSum.OVER_PINS, OverPinsSum.CONTACT_DIAMETER)
                : List.of(OverPinsSum.OVER_PINS, OverPinsSum.CONTACT_DIAMETER);
    }

    @Override
    public String called(Output<?> output, FormValues filled) {
        if (output.key().equals(OverPinsSum.OVER_PINS.key())) {
            return isInternal(filled) ? "between-pins" : "over-pins";
        }
        return output.key().equals(OverPinsSum.THICKNESS_FOUND.key()) ? "tooth-thickness" : output.key();
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return result.find(OverPinsSum.OVER_PINS).map(format::length).flatMap(measured -> ToothFields.whole(
                        filled, ToothInputs.TEETH.key())
                .map(teeth -> SketchPicture.overPins(
                        teeth,
                        isInternal(filled) ? ToothSide.INTERNAL : ToothSide.EXTERNAL,
                        measured,
                        format.spoken(kind(), measured))));
    }
}
