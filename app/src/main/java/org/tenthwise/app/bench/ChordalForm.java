package org.tenthwise.app.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SketchPicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.gear.ChordalSum;
import org.tenthwise.app.sums.gear.ToothInputs;

/** What a gear tooth caliper is set to and reads. */
final class ChordalForm implements BenchForm {

    private static final Map<String, String> NAMES =
            Map.of(ChordalSum.THICKNESS.key(), "arc-thickness", ChordalSum.HALF_ANGLE.key(), "tooth-half-angle");

    @Override
    public BenchKind kind() {
        return BenchKind.CHORDAL;
    }

    @Override
    public String sum() {
        return ChordalSum.NAME;
    }

    /** A tooth between the jaws of a caliper, its tongue on the tip. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 8, 50, 26, 50, 34, 32, 40, 18, 56, 18, 62, 32, 70, 50, 88, 50);
        sketch.thick(Role.ACCENT, 34, 32, 22, 32, 22, 4);
        sketch.thick(Role.ACCENT, 62, 32, 74, 32, 74, 4);
        sketch.thick(Role.ACCENT, 48, 4, 48, 17);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        List<FormField> fields = ToothFields.of(filled);
        fields.addAll(List.of(
                FormField.of(ChordalSum.ADDENDUM), FormField.of(ToothInputs.SHIFT), FormField.of(ToothInputs.HELIX)));
        return fields;
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(ChordalSum.CHORD, ChordalSum.CHORDAL_ADDENDUM, ChordalSum.THICKNESS);
    }

    @Override
    public String called(Output<?> output, FormValues filled) {
        return NAMES.getOrDefault(output.key(), output.key());
    }

    /** Set on the caliper. */
    @Override
    public boolean goesIntoTheControl() {
        return true;
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return result.find(ChordalSum.CHORD)
                .map(format::length)
                .map(chord -> SketchPicture.tooth(
                        chord,
                        result.find(ChordalSum.CHORDAL_ADDENDUM).map(format::length),
                        format.spoken(kind(), chord)));
    }
}
