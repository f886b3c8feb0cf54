package org.tenthwise.app.bench;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SketchPicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.taper.SineBarSum;

/** The stack under a sine bar, or the angle of a stack. */
final class SineBarForm implements BenchForm {

    private static final String BY = "sine_by";

    @Override
    public BenchKind kind() {
        return BenchKind.SINE_BAR;
    }

    @Override
    public String sum() {
        return SineBarSum.NAME;
    }

    /** A bar on its two rollers, one on a stack. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thin(Role.LINE, 2, 52, 94, 52);
        sketch.thick(Role.ACCENT, 70, 52, 70, 28, 86, 28, 86, 52);
        sketch.thick(Role.LINE, 10, 38, 82, 12, 85, 19, 13, 45, 10, 38);
        sketch.ring(16, 46, 5);
        sketch.ring(78, 23, 5);
    }

    private static boolean byStack(FormValues filled) {
        return filled.is(BY, SineBarSum.STACK.key());
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        return List.of(
                FormField.ofTheForm(BY, SineBarSum.ANGLE.key(), SineBarSum.STACK.key()),
                FormField.of(SineBarSum.LENGTH).called("sine-length"),
                FormField.of(byStack(filled) ? SineBarSum.STACK : SineBarSum.ANGLE),
                FormField.of(SineBarSum.STACK_ERROR));
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(byStack(filled) ? SineBarSum.ANGLE_FOUND : SineBarSum.STACK_FOUND);
    }

    @Override
    public String formula(FormValues filled) {
        return byStack(filled) ? "back" : "all";
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return result.find(SineBarSum.STACK_FOUND)
                .map(format::length)
                .map(stack -> SketchPicture.sineBar(stack, format.spoken(kind(), stack)));
    }
}
