package org.tenthwise.app.bench;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SketchPicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.thread.ThreadPercentSum;

/** How much thread a drilled hole leaves for the tap. */
final class ThreadPercentForm implements BenchForm {

    @Override
    public BenchKind kind() {
        return BenchKind.THREAD_PERCENT;
    }

    @Override
    public String sum() {
        return ThreadPercentSum.NAME;
    }

    /** A hole with the thread there will be in it. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 4, 6, 34, 6, 34, 52);
        sketch.thick(Role.LINE, 92, 6, 62, 6, 62, 52);
        sketch.thin(Role.ACCENT, 26, 6, 26, 52);
        sketch.thin(Role.ACCENT, 70, 6, 70, 52);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        return List.of(
                FormField.of(ThreadPercentSum.MAJOR).ofADesignation(),
                ThreadFields.pitchBy(filled.unit()),
                ThreadFields.pitch(filled),
                FormField.of(ThreadPercentSum.DRILL));
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(ThreadPercentSum.PERCENT);
    }

    @Override
    public String symbol(Output<?> figure, FormValues filled) {
        return "%";
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return result.find(ThreadPercentSum.PERCENT)
                .map(percent -> SketchPicture.tapHole(
                        filled.shown(ThreadPercentSum.DRILL),
                        filled.shown(ThreadPercentSum.MAJOR),
                        format.spoken(kind(), filled.shown(ThreadPercentSum.DRILL))));
    }
}
