package org.tenthwise.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.SizePicture;
import org.tenthwise.app.picture.SizePicture.Sized;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;

/** The even cut that brings every size in, as the register counts it, or what may come off at the most. */
final class NextCutForm implements BenchForm {

    static final String SIDE = "side";
    static final String INSIDE = "inside";
    static final String OUTSIDE = "outside";
    static final String LOWER = "lower";
    static final String UPPER = "upper";
    static final String SIZES = "sizes";
    static final String AIM_BY = "aim_by";
    static final String SIZE = "size";
    static final String AIM = "aim";
    static final String GUARD_BAND = "guard_band";
    static final String LEAST_CUT = "least_cut";
    static final String OFFSET_STEP = "offset_step";
    static final String COMBINE = "combine";
    static final String REGISTER = "register";
    static final String DIAMETER = "diameter";
    static final String RADIUS = "radius";

    @Override
    public BenchKind kind() {
        return BenchKind.NEXT_CUT;
    }

    @Override
    public String sum() {
        return "next-cut";
    }

    @Override
    public List<FormField> asks(FormValues filled) {
        List<FormField> asks = new ArrayList<>(List.of(
                FormField.choice(SIDE, OUTSIDE, INSIDE),
                FormField.length(UPPER),
                FormField.length(LOWER),
                FormField.of(FormField.FieldKind.LENGTHS, SIZES),
                FormField.choice(REGISTER, DIAMETER, RADIUS),
                FormField.choice(AIM_BY, Aim.ByLimits.MIDDLE.key(), Aim.ByLimits.THIRD.key(), SIZE)
                        .aside()));
        if (filled.is(AIM_BY, SIZE)) {
            asks.add(FormField.length(AIM));
        }
        asks.addAll(List.of(
                FormField.length(GUARD_BAND).optional(),
                FormField.length(LEAST_CUT).optional(),
                FormField.length(OFFSET_STEP).optional(),
                FormField.choice(COMBINE, "each", "mean", "largest", "smallest")));
        return asks;
    }

    @Override
    public Map<String, SumValue> made(FormValues filled) {
        return filled.is(AIM_BY, SIZE) ? Map.of() : Map.of(AIM, new SumValue.Plain(filled.text(AIM_BY)));
    }

    @Override
    public List<String> first(FormValues filled) {
        return List.of("offset_change", "safe_cut", "state", "reason");
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult answer, AnswerFormat said) {
        return filled.length(LOWER)
                .flatMap(lower -> filled.length(UPPER).map(upper -> drawn(filled, answer, said, lower, upper)));
    }

    private static Picture drawn(FormValues filled, SumResult answer, AnswerFormat said, Length lower, Length upper) {
        boolean outside = filled.is(SIDE, OUTSIDE);
        List<Sized> sizes = filled.several(SIZES).stream()
                .map(text -> new Sized(Length.of(text, filled.unit()), text))
                .toList();
        Sized judged = sizes.stream()
                .max((one, other) -> beyond(one.size(), lower, upper).compareTo(beyond(other.size(), lower, upper)))
                .orElseThrow();
        Length toUpper = upper.minus(judged.size()).abs();
        Length toLower = judged.size().minus(lower).abs();
        Limit near = toUpper.isBelow(toLower) ? Limit.UPPER : Limit.LOWER;
        Length distance = near == Limit.UPPER ? toUpper : toLower;
        String cut = said.words().say("picture.still-to-cut");
        String past = said.words().say("picture.past-size");
        return new SizePicture(
                outside ? Feature.DIAMETER : Feature.BORE,
                filled.unit(),
                Optional.of(new Sized(lower, filled.text(LOWER))),
                Optional.of(new Sized(upper, filled.text(UPPER))),
                filled.length(GUARD_BAND).orElse(Length.ZERO),
                IntStream.range(0, sizes.size())
                        .mapToObj(i -> new SizePicture.Column(
                                SizePicture.Kind.TAKEN,
                                sizes.size() == 1 ? "" : String.valueOf(i + 1),
                                "",
                                Optional.of(sizes.get(i)),
                                sizes.get(i).equals(judged),
                                Optional.empty(),
                                Optional.empty()))
                        .toList(),
                Optional.of(judged),
                Optional.of(new SizePicture.Distance(distance, near, said.length(distance))),
                cut(filled, answer, said, lower, upper),
                Optional.empty(),
                new SizePicture.Said(
                        outside ? cut : past,
                        outside ? past : cut,
                        said.words().say("picture.next-cut"),
                        step -> said.words().say("picture.scale", step)),
                said.words().say("bench.picture.size", filled.text(SIZES)));
    }

    private static Optional<SizePicture.Cut> cut(
            FormValues filled, SumResult answer, AnswerFormat said, Length lower, Length upper) {
        Register register = filled.is(REGISTER, RADIUS) ? Register.RADIUS : Register.DIAMETER;
        return said.length(answer, "offset_change")
                .map(change -> new SizePicture.Cut(
                        said.sized(aim(filled, lower, upper)),
                        register.onDiameter(change.abs()),
                        said.words().say("picture.offset", said.signed(change))));
    }

    private static Length aim(FormValues filled, Length lower, Length upper) {
        Limit metalSide = (filled.is(SIDE, OUTSIDE) ? Feature.DIAMETER : Feature.BORE).stillCutBeyond();
        Limits limits = Limits.between(written(lower, filled), written(upper, filled));
        return filled.length(AIM).filter(typed -> filled.is(AIM_BY, SIZE)).orElseGet(() -> Aim.ofKey(
                        filled.text(AIM_BY))
                .orElse(Aim.ByLimits.MIDDLE)
                .of(limits, metalSide));
    }

    private static Written written(Length limit, FormValues filled) {
        return Written.of(limit.in(filled.unit()), filled.unit());
    }

    /** How far a size is out of its limits; less than nought inside. */
    private static Length beyond(Length size, Length lower, Length upper) {
        return Length.greatest(List.of(size.minus(upper), lower.minus(size)));
    }
}
