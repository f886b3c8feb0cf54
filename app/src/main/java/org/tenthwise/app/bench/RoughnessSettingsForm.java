package org.tenthwise.app.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SketchPicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.roughness.RoughnessSettingsSum;
import org.tenthwise.model.compute.roughness.RoughnessEdition;
import org.tenthwise.model.quantity.Unit;

/** What a roughness instrument is set to. */
final class RoughnessSettingsForm implements BenchForm {

    private static final List<String> EDITIONS = Arrays.stream(RoughnessEdition.values())
            .map(edition -> edition.title().split(":")[0])
            .toList();

    @Override
    public BenchKind kind() {
        return BenchKind.ROUGHNESS_SETTINGS;
    }

    @Override
    public String sum() {
        return RoughnessSettingsSum.NAME;
    }

    /** A rough profile over the lengths it is measured in. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 4, 32, 16, 10, 24, 30, 38, 8, 48, 34, 60, 14, 68, 28, 80, 10, 92, 32);
        sketch.thin(Role.ACCENT, 4, 46, 92, 46);
        for (double x = 4; x <= 92; x += 22) {
            sketch.thick(Role.ACCENT, x, 40, x, 52);
        }
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        return List.of(
                FormField.of(RoughnessSettingsSum.PARAMETER).called("roughness-parameter"),
                FormField.of(RoughnessSettingsSum.LIMIT).called("roughness-limit-um"),
                FormField.of(RoughnessSettingsSum.EDITION).choosing(EDITIONS).called("roughness-edition"));
    }

    /** Both standards give their bands in micrometres and their lengths in millimetres. */
    @Override
    public Optional<Unit> onlyUnit(FormValues filled) {
        return Optional.of(Unit.MILLIMETRE);
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(RoughnessSettingsSum.CUTOFF, RoughnessSettingsSum.EVALUATION_LENGTH);
    }

    /** Set at the instrument. */
    @Override
    public boolean goesIntoTheControl() {
        return true;
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return result.find(RoughnessSettingsSum.CUTOFF).map(format::length).flatMap(cutoff -> result.find(
                        RoughnessSettingsSum.EVALUATION_LENGTH)
                .map(format::length)
                .map(all -> SketchPicture.profile(cutoff, all, format.spoken(kind(), cutoff))));
    }
}
