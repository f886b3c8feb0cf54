package org.tenthwise.app.bench;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.SizePicture;
import org.tenthwise.app.picture.SizePicture.Sized;
import org.tenthwise.app.sums.Answer;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limit;

/** The change of the offset for the next cut, and what is left to come off. */
final class StockLeft implements BenchSum {

    static final String SIDE = "side";
    static final String INSIDE = "inside";
    static final String OUTSIDE = "outside";
    static final String LOWER = "lower";
    static final String UPPER = "upper";
    static final String MEASURED = "measured";

    @Override
    public BenchKind kind() {
        return BenchKind.NEXT_CUT;
    }

    @Override
    public String sum() {
        return "next-cut";
    }

    @Override
    public List<Ask> asks(Filled filled) {
        return List.of(Ask.choice(SIDE, OUTSIDE, INSIDE), Ask.length(UPPER), Ask.length(LOWER), Ask.length(MEASURED),
                Ask.length("aim").optional(), Ask.choice("register", "diameter", "radius"));
    }

    @Override
    public List<String> first(Filled filled) {
        return List.of("offset_change", "stock_left", "state");
    }

    @Override
    public Optional<Picture> picture(Filled filled, Answer answer, Said said) {
        return filled.length(LOWER).flatMap(lower -> filled.length(UPPER).flatMap(upper -> filled.length(MEASURED)
                .map(measured -> drawn(filled, answer, said, lower, upper, measured))));
    }

    private static Picture drawn(Filled filled, Answer answer, Said said, Length lower, Length upper, Length measured) {
        boolean outside = filled.is(SIDE, OUTSIDE);
        Length toUpper = upper.minus(measured).abs();
        Length toLower = measured.minus(lower).abs();
        Limit near = toUpper.isBelow(toLower) ? Limit.UPPER : Limit.LOWER;
        Length distance = near == Limit.UPPER ? toUpper : toLower;
        Length aim = filled.length("aim").orElse(lower.plus(upper).half());
        String cut = said.words().say("picture.still-to-cut");
        String past = said.words().say("picture.past-size");
        Sized judged = new Sized(measured, filled.text(MEASURED));
        return new SizePicture(outside ? Feature.DIAMETER : Feature.BORE, filled.unit(), Optional.of(new Sized(lower, filled.text(LOWER))),
                Optional.of(new Sized(upper, filled.text(UPPER))), Length.ZERO,
                List.of(new SizePicture.Column(SizePicture.Kind.TAKEN, "", "", Optional.of(judged), true, Optional.empty(), Optional.empty())),
                Optional.of(judged), Optional.of(new SizePicture.Distance(distance, near, said.length(distance))),
                said.length(answer, "stock_left").filter(stock -> stock.signum() > 0)
                        .map(stock -> new SizePicture.Stock(said.sized(aim), stock, said.length(stock), "")),
                Optional.empty(), new SizePicture.Said(outside ? cut : past, outside ? past : cut, said.words().say("picture.stock-left"),
                        step -> said.words().say("picture.scale", step)), said.words().say("bench.picture.size", said.length(measured)));
    }
}
