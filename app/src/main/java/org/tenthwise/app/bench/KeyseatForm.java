package org.tenthwise.app.bench;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SketchPicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.profile.KeyseatSum;

/** How deep a keyway of the inch standard is. */
final class KeyseatForm implements BenchForm {

    @Override
    public BenchKind kind() {
        return BenchKind.KEYSEAT;
    }

    @Override
    public String sum() {
        return KeyseatSum.NAME;
    }

    /** A shaft from the bottom of its keyway to the far side. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.arc(48, 30, 24, -70.5, 250.5);
        sketch.thick(Role.LINE, 40, 7.4, 40, 20, 56, 20, 56, 7.4);
        sketch.thick(Role.ACCENT, 84, 20, 84, 54);
        sketch.thin(Role.LINE, 56, 20, 90, 20);
        sketch.thin(Role.LINE, 48, 54, 90, 54);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        return List.of(
                FormField.of(KeyseatSum.DIAMETER).called("shaft-diameter"),
                FormField.of(KeyseatSum.WIDTH).called("key-width"),
                FormField.of(KeyseatSum.HEIGHT).called("key-height"));
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(KeyseatSum.S, KeyseatSum.T_PARALLEL, KeyseatSum.T_TAPER, KeyseatSum.CREST);
    }

    /** Cut to, so that it is said first of which keys it is. */
    @Override
    public boolean goesIntoTheControl() {
        return true;
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return result.find(KeyseatSum.S).map(format::length).flatMap(shaft -> result.find(KeyseatSum.T_PARALLEL)
                .map(format::length)
                .map(hub -> SketchPicture.keyway(shaft, hub, format.spoken(kind(), shaft))));
    }
}
