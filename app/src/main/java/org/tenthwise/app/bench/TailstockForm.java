package org.tenthwise.app.bench;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SketchPicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.taper.TailstockSum;

/** How far the tailstock is set over for a taper. */
final class TailstockForm implements BenchForm {

    private static final String BY = "taper_by";

    @Override
    public BenchKind kind() {
        return BenchKind.TAILSTOCK;
    }

    @Override
    public String sum() {
        return TailstockSum.NAME;
    }

    /** Tapered work between centres that are out of line. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 16, 10, 76, 20, 76, 44, 16, 44, 16, 10);
        sketch.thin(Role.LINE, 2, 27, 94, 27);
        sketch.thick(Role.ACCENT, 92, 26, 76, 32, 92, 38);
        sketch.thick(Role.LINE, 2, 22, 16, 27, 2, 32);
    }

    private static boolean perFoot(FormValues filled) {
        return filled.is(BY, TailstockSum.PER_FOOT.key());
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        return List.of(
                FormField.ofTheForm(BY, TailstockSum.PER_UNIT.key(), TailstockSum.PER_FOOT.key()),
                FormField.of(perFoot(filled) ? TailstockSum.PER_FOOT : TailstockSum.PER_UNIT),
                FormField.of(TailstockSum.WORK_LENGTH));
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(TailstockSum.OFFSET);
    }

    @Override
    public String called(Output<?> output, FormValues filled) {
        return "tailstock-offset";
    }

    /** Set at the machine. */
    @Override
    public boolean goesIntoTheControl() {
        return true;
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return result.find(TailstockSum.OFFSET)
                .map(format::length)
                .map(offset -> SketchPicture.tailstock(offset, format.spoken(kind(), offset)));
    }
}
