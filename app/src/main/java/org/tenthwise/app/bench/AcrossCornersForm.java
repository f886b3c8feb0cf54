package org.tenthwise.app.bench;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SketchPicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.profile.AcrossCornersSum;

/** Across the corners of a hexagon or a square. */
final class AcrossCornersForm implements BenchForm {

    @Override
    public BenchKind kind() {
        return BenchKind.ACROSS_CORNERS;
    }

    @Override
    public String sum() {
        return AcrossCornersSum.NAME;
    }

    /** A hexagon from corner to corner. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 76, 28, 62, 52, 34, 52, 20, 28, 34, 4, 62, 4, 76, 28);
        sketch.thick(Role.ACCENT, 20, 28, 76, 28);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        return List.of(FormField.of(AcrossCornersSum.SIDES), FormField.of(AcrossCornersSum.ACROSS_FLATS));
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(AcrossCornersSum.ACROSS_CORNERS);
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return result.find(AcrossCornersSum.ACROSS_CORNERS).map(format::length).flatMap(corners -> ToothFields.whole(
                        filled, AcrossCornersSum.SIDES.key())
                .map(sides -> SketchPicture.polygon(
                        sides, corners, filled.shown(AcrossCornersSum.ACROSS_FLATS), format.spoken(kind(), corners))));
    }
}
