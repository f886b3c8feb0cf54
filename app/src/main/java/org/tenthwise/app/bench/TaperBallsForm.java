package org.tenthwise.app.bench;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SketchPicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.taper.TaperBallsSum;

/** An inside taper by two balls. */
final class TaperBallsForm implements BenchForm {

    @Override
    public BenchKind kind() {
        return BenchKind.TAPER_BALLS;
    }

    @Override
    public String sum() {
        return TaperBallsSum.NAME;
    }

    /** Two balls in a hole that narrows. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 4, 6, 22, 6, 34, 52, 4, 52);
        sketch.thick(Role.LINE, 92, 6, 74, 6, 62, 52, 92, 52);
        sketch.ring(48, 41, 10);
        sketch.ring(48, 17, 14);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        return List.of(
                FormField.of(TaperBallsSum.LARGE_BALL),
                FormField.of(TaperBallsSum.LARGE_DEPTH),
                FormField.of(TaperBallsSum.SMALL_BALL),
                FormField.of(TaperBallsSum.SMALL_DEPTH));
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(TaperBallsSum.INCLUDED, TaperBallsSum.MOUTH);
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return result.find(TaperBallsSum.INCLUDED)
                .map(angle -> SketchPicture.balls(
                        filled.shown(TaperBallsSum.SMALL_DEPTH).replace('-', '\u2212'),
                        filled.shown(TaperBallsSum.LARGE_DEPTH).replace('-', '\u2212'),
                        format.spoken(kind(), format.figure(BigDecimal.valueOf(angle), false) + "°")));
    }
}
