package org.tenthwise.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.RodPicture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.temperature.AtTwentySum;

/** The size at 20 °C of work and gauge that are warmer or colder. */
final class AtTwentyForm implements BenchForm {

    @Override
    public BenchKind kind() {
        return BenchKind.TEMPERATURE;
    }

    @Override
    public String sum() {
        return AtTwentySum.NAME;
    }

    /** A rod cold, and the same rod warm. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 6, 8, 70, 8, 70, 22, 6, 22, 6, 8);
        sketch.thick(Role.ACCENT, 6, 34, 86, 34, 86, 48, 6, 48, 6, 34);
        sketch.thin(Role.LINE, 70, 22, 70, 34);
        sketch.thin(Role.LINE, 86, 8, 86, 34);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        List<FormField> fields =
                new ArrayList<>(List.of(FormField.of(AtTwentySum.READING), FormField.of(AtTwentySum.PART_TEMP)));
        fields.addAll(ExpansionFields.of(AtTwentySum.PART_ALPHA));
        fields.add(FormField.of(AtTwentySum.GAUGE_TEMP));
        fields.addAll(ExpansionFields.of(AtTwentySum.GAUGE_ALPHA));
        fields.addAll(List.of(FormField.of(AtTwentySum.U_TEMP), FormField.of(AtTwentySum.U_ALPHA)));
        return fields;
    }

    @Override
    public FormValues follow(FormValues filled, String id) {
        return ExpansionFields.follow(filled, id);
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(AtTwentySum.SIZE);
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return result.find(AtTwentySum.SIZE).flatMap(size -> result.find(AtTwentySum.CORRECTION)
                .map(correction -> new RodPicture(
                        format.words().say("bench.rod.read", filled.text(AtTwentySum.PART_TEMP)),
                        filled.shown(AtTwentySum.READING),
                        format.words().say("bench.rod.at-20"),
                        format.length(size),
                        correction,
                        format.signed(correction),
                        format.words()
                                .say("bench.picture.rod", filled.shown(AtTwentySum.READING), format.length(size)))));
    }
}
