package org.tenthwise.app.bench;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SketchPicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.gear.SpanSum;
import org.tenthwise.app.sums.gear.ToothInputs;

/** The span over several teeth of a gear. */
final class SpanForm implements BenchForm {

    @Override
    public BenchKind kind() {
        return BenchKind.SPAN;
    }

    @Override
    public String sum() {
        return SpanSum.NAME;
    }

    /** Anvils over two teeth. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(
                Role.LINE, 4, 50, 10, 50, 18, 24, 28, 24, 36, 50, 42, 50, 50, 24, 60, 24, 68, 50, 74, 50, 82, 24, 92,
                24);
        sketch.thick(Role.ACCENT, 13, 8, 13, 38);
        sketch.thick(Role.ACCENT, 65, 8, 65, 38);
        sketch.thin(Role.ACCENT, 13, 12, 65, 12);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        List<FormField> fields = ToothFields.of(filled);
        fields.add(FormField.of(SpanSum.OVER).called("over-teeth"));
        fields.addAll(List.of(FormField.of(ToothInputs.SHIFT), FormField.of(ToothInputs.HELIX)));
        return fields;
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(SpanSum.SPAN, SpanSum.CONTACT_DIAMETER);
    }

    @Override
    public String called(Output<?> output, FormValues filled) {
        return output.key().equals(SpanSum.CONTACT_DIAMETER.key()) ? "span-contact" : output.key();
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return result.find(SpanSum.SPAN).map(format::length).flatMap(span -> ToothFields.whole(
                        filled, ToothInputs.TEETH.key())
                .flatMap(teeth -> ToothFields.whole(filled, SpanSum.OVER.key())
                        .map(over -> SketchPicture.span(teeth, over, span, format.spoken(kind(), span)))));
    }
}
