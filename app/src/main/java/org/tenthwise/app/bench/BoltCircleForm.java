package org.tenthwise.app.bench;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.app.picture.BoltCirclePicture;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.position.BoltCircleSum;
import org.tenthwise.model.quantity.Length;

/** The places of holes evenly spaced on a circle. */
final class BoltCircleForm implements BenchForm {

    private static final double FULL_TURN = 360;

    @Override
    public BenchKind kind() {
        return BenchKind.BOLT_CIRCLE;
    }

    @Override
    public String sum() {
        return BoltCircleSum.NAME;
    }

    /** Holes on their circle. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thinRing(48, 28, 20);
        sketch.ring(68, 28, 6);
        sketch.ring(48, 8, 6);
        sketch.ring(28, 28, 6);
        sketch.ring(48, 48, 6);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        return List.of(
                FormField.of(BoltCircleSum.DIAMETER).called("circle-diameter"),
                FormField.of(BoltCircleSum.HOLES),
                FormField.of(BoltCircleSum.START).called("first-hole"),
                FormField.of(BoltCircleSum.CENTRE_X),
                FormField.of(BoltCircleSum.CENTRE_Y));
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(BoltCircleSum.CHORD, BoltCircleSum.X);
    }

    @Override
    public String called(Output<?> output, FormValues filled) {
        return output.key().equals(BoltCircleSum.CHORD.key()) ? "hole-to-hole" : output.key();
    }

    /** The Y of a hole stands beside its X. */
    @Override
    public boolean shows(Output<?> output) {
        return !output.key().equals(BoltCircleSum.Y.key());
    }

    @Override
    public List<ResultRow> rows(Output<?> output, SumResult result, AnswerFormat format) {
        List<Length> x = result.find(BoltCircleSum.X).orElse(List.of());
        List<Length> y = result.find(BoltCircleSum.Y).orElse(List.of());
        return IntStream.range(0, x.size())
                .mapToObj(i -> new ResultRow(
                        BoltCircleSum.X.key(),
                        format.words().say("bench.hole", i + 1),
                        format.words()
                                .say(
                                        "bench.hole.at",
                                        format.withUnit(format.length(x.get(i))),
                                        format.withUnit(format.length(y.get(i))))))
                .toList();
    }

    /** The places of the holes are typed into the control. */
    @Override
    public boolean goesIntoTheControl() {
        return true;
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        double start =
                filled.number(BoltCircleSum.START.key()).orElse(BigDecimal.ZERO).doubleValue();
        int holes = result.find(BoltCircleSum.X).orElse(List.of()).size();
        return Optional.of(new BoltCirclePicture(
                IntStream.range(0, holes)
                        .mapToObj(i -> start + FULL_TURN * i / holes)
                        .toList(),
                format.spoken(kind(), filled.shown(BoltCircleSum.DIAMETER))));
    }
}
