package org.tenthwise.app.bench;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SketchPicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.profile.DovetailSum;
import org.tenthwise.model.compute.dovetail.DovetailSide;

/** A dovetail over or between its pins. */
final class DovetailForm implements BenchForm {

    private static final String BY = "dovetail_by";
    private static final String MALE = "male";

    @Override
    public BenchKind kind() {
        return BenchKind.DOVETAIL;
    }

    @Override
    public String sum() {
        return DovetailSum.NAME;
    }

    /** Two pins in the corners of a dovetail. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 2, 44, 34, 44, 22, 10, 74, 10, 62, 44, 94, 44);
        sketch.ring(23, 35, 8);
        sketch.ring(73, 35, 8);
    }

    private static boolean byReading(FormValues filled) {
        return filled.is(BY, DovetailSum.MEASURED.key());
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        String side = filled.is(DovetailSum.SIDE, MALE)
                        || filled.text(DovetailSum.SIDE).isEmpty()
                ? "male"
                : "female";
        return List.of(
                FormField.ofTheForm(BY, DovetailSum.WIDTH.key(), DovetailSum.MEASURED.key()),
                FormField.of(DovetailSum.SIDE).called("dovetail-side"),
                FormField.of(DovetailSum.ANGLE).called("flank-angle"),
                FormField.of(DovetailSum.PIN),
                byReading(filled)
                        ? FormField.of(DovetailSum.MEASURED).called("pins-" + side)
                        : FormField.of(DovetailSum.WIDTH).called("width-" + side),
                FormField.of(DovetailSum.HEIGHT).called("dovetail-height"));
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return byReading(filled) ? List.of(DovetailSum.WIDTH_FOUND) : List.of(DovetailSum.MEASURED_FOUND);
    }

    @Override
    public String called(Output<?> output, FormValues filled) {
        return "dovetail-" + output.key() + "-" + filled.text(DovetailSum.SIDE);
    }

    @Override
    public String formula(FormValues filled) {
        return filled.is(DovetailSum.SIDE, MALE) ? MALE : "female";
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return result.find(DovetailSum.MEASURED_FOUND)
                .map(format::length)
                .map(measured -> SketchPicture.dovetail(
                        filled.is(DovetailSum.SIDE, MALE) ? DovetailSide.MALE : DovetailSide.FEMALE,
                        measured,
                        format.spoken(kind(), measured)));
    }
}
