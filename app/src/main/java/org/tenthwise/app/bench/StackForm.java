package org.tenthwise.app.bench;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.ZoneBars;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.chain.StackSum;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** What the tolerances of sizes in a row come to, and what they leave of a gap. */
final class StackForm implements BenchForm {

    @Override
    public BenchKind kind() {
        return BenchKind.STACK;
    }

    @Override
    public String sum() {
        return StackSum.NAME;
    }

    /** Parts in a row, and the gap they leave. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 4, 6, 4, 50, 92, 50, 92, 6);
        sketch.thick(Role.LINE, 4, 24, 30, 24, 30, 50);
        sketch.thick(Role.LINE, 30, 16, 52, 16, 52, 50);
        sketch.thick(Role.LINE, 30, 16, 30, 24);
        sketch.thick(Role.LINE, 52, 28, 76, 28, 76, 50);
        sketch.area(Role.ZONE, 77, 8, 91, 8, 91, 49, 77, 49);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        return List.of(
                FormField.of(StackSum.TOLERANCES).called("stack-tolerances"),
                FormField.of(StackSum.GAP).called("stack-gap"));
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return filled.length(StackSum.GAP).isPresent()
                ? List.of(StackSum.WORST_LEAST, StackSum.WORST_GREATEST, StackSum.RSS_LEAST, StackSum.RSS_GREATEST)
                : List.of(StackSum.WORST, StackSum.ROOT_SUM_SQUARE);
    }

    /** The gap between its worst limits, or how far off it can be; the likely limits beside them. */
    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        Length gap = filled.length(StackSum.GAP).orElse(Length.of("0", Unit.MILLIMETRE));
        return result.find(StackSum.WORST).flatMap(worst -> result.find(StackSum.ROOT_SUM_SQUARE)
                .map(likely -> new ZoneBars(
                        List.of(
                                bar("bench.zone.worst", gap, worst, format),
                                bar("bench.zone.likely", gap, likely, format)),
                        Optional.of(format.length(gap)),
                        List.of(),
                        format.spoken(kind(), format.length(worst)))));
    }

    private static ZoneBars.Bar bar(String name, Length gap, Length off, AnswerFormat format) {
        return new ZoneBars.Bar(
                format.words().say(name),
                true,
                gap,
                Optional.of(format.least(gap.plus(off))),
                Optional.of(format.greatest(gap.minus(off))));
    }
}
