package org.tenthwise.app.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.PositionPicture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.position.PositionSum;
import org.tenthwise.model.quantity.Length;

/** How far a hole or a pin lies from its true place, against its zone. */
final class PositionForm implements BenchForm {

    private static final String WITHOUT = "none";

    @Override
    public BenchKind kind() {
        return BenchKind.POSITION;
    }

    @Override
    public String sum() {
        return PositionSum.NAME;
    }

    /** A hole off its true place. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thinRing(48, 28, 24);
        sketch.thin(Role.LINE, 18, 28, 78, 28);
        sketch.thin(Role.LINE, 48, 0, 48, 56);
        sketch.thick(Role.ACCENT, 48, 28, 58, 18);
        sketch.dot(58, 18, 4);
    }

    private static boolean isWithout(FormValues filled) {
        return filled.text(PositionSum.MODIFIER).isEmpty() || filled.is(PositionSum.MODIFIER, WITHOUT);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        List<FormField> fields = new ArrayList<>(List.of(
                severally(FormField.of(PositionSum.DX)),
                severally(FormField.of(PositionSum.DY)),
                FormField.of(PositionSum.ZONE).called("position-zone"),
                FormField.of(PositionSum.MODIFIER)));
        if (!isWithout(filled)) {
            boolean fromLeast = filled.is(PositionSum.MODIFIER, "mmc") != filled.is(PositionSum.FEATURE, "shaft");
            FormField least = FormField.of(PositionSum.LEAST).called("least-size");
            FormField greatest = FormField.of(PositionSum.GREATEST).called("greatest-size");
            fields.addAll(List.of(
                    FormField.of(PositionSum.FEATURE),
                    FormField.of(PositionSum.SIZE).must().called("size-read"),
                    fromLeast ? least.must() : least,
                    fromLeast ? greatest : greatest.must(),
                    FormField.of(PositionSum.ORIENTATION_LOSS)));
        }
        return fields;
    }

    /** Off at one end and at the other, one after another. */
    private static FormField severally(FormField field) {
        return field.several() ? field : field.oneAfterAnother();
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(PositionSum.STATE, PositionSum.DEVIATION, PositionSum.ALLOWED, PositionSum.BONUS);
    }

    @Override
    public String called(Output<?> output, FormValues filled) {
        return output.key().equals(PositionSum.STATE.key()) ? "position-state" : output.key();
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        List<Length> across = filled.lengths(PositionSum.DX);
        List<Length> up = filled.lengths(PositionSum.DY);
        int furthest = IntStream.range(0, across.size())
                .boxed()
                .max(Comparator.comparing(i -> square(across.get(i)).add(square(up.get(i)))))
                .orElse(0);
        return filled.length(PositionSum.ZONE)
                .map(zone -> new PositionPicture(
                        zone,
                        result.find(PositionSum.ALLOWED).orElse(zone),
                        IntStream.range(0, across.size())
                                .mapToObj(i -> new PositionPicture.Axis(across.get(i), up.get(i), i == furthest, i > 0))
                                .toList(),
                        notes(filled, result, format),
                        format.spoken(
                                kind(),
                                result.find(PositionSum.DEVIATION)
                                        .map(off -> format.length(off, SafeSide.of(PositionSum.DEVIATION)))
                                        .orElse(""))));
    }

    private static List<String> notes(FormValues filled, SumResult result, AnswerFormat format) {
        return Stream.of(
                        result.find(PositionSum.DEVIATION).map(off -> format.words()
                                .say("picture.deviation", format.length(off, SafeSide.of(PositionSum.DEVIATION)))),
                        Optional.of(format.words().say("picture.zone", filled.shown(PositionSum.ZONE))),
                        result.find(PositionSum.BONUS)
                                .filter(bonus -> bonus.signum() > 0)
                                .map(bonus -> format.words()
                                        .say("picture.bonus", format.length(bonus, SafeSide.of(PositionSum.BONUS)))))
                .flatMap(Optional::stream)
                .toList();
    }

    private static BigDecimal square(Length length) {
        return length.millimetres().pow(2);
    }
}
