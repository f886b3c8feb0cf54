package org.tenthwise.app.bench;

import static org.tenthwise.app.sums.cutting.CutInputs.LOWER;
import static org.tenthwise.app.sums.cutting.CutInputs.REGISTER;
import static org.tenthwise.app.sums.cutting.CutInputs.SIDE;
import static org.tenthwise.app.sums.cutting.CutInputs.UPPER;
import static org.tenthwise.app.sums.cutting.NextCutSum.AIM;
import static org.tenthwise.app.sums.cutting.NextCutSum.COMBINE;
import static org.tenthwise.app.sums.cutting.NextCutSum.GUARD_BAND;
import static org.tenthwise.app.sums.cutting.NextCutSum.LEAST_CUT;
import static org.tenthwise.app.sums.cutting.NextCutSum.OFFSET_CHANGE;
import static org.tenthwise.app.sums.cutting.NextCutSum.OFFSET_STEP;
import static org.tenthwise.app.sums.cutting.NextCutSum.REASON;
import static org.tenthwise.app.sums.cutting.NextCutSum.SAFE_CUT;
import static org.tenthwise.app.sums.cutting.NextCutSum.SIZES;
import static org.tenthwise.app.sums.cutting.NextCutSum.STATE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SizePicture;
import org.tenthwise.app.picture.SizePicture.Sized;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.cutting.NextCutSum;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Word;

/** The even cut that brings every size in, as the register counts it, or what may come off at the most. */
final class NextCutForm implements BenchForm {

    static final String INSIDE = "inside";
    static final String OUTSIDE = "outside";
    static final String AIM_BY = "aim_by";
    static final String SIZE = "size";

    @Override
    public BenchKind kind() {
        return BenchKind.NEXT_CUT;
    }

    @Override
    public String sum() {
        return NextCutSum.NAME;
    }

    /** A surface, the finished line under it, and the tool that takes the rest. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.area(Role.ZONE, 4, 30, 60, 30, 60, 52, 4, 52);
        sketch.thick(Role.LINE, 4, 18, 60, 18, 60, 52);
        sketch.thin(Role.LINE, 4, 30, 60, 30);
        sketch.thick(Role.ACCENT, 82, 4, 82, 22);
        sketch.area(Role.ACCENT, 74, 18, 90, 18, 82, 30);
        sketch.thin(Role.LINE, 64, 30, 94, 30);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        List<FormField> fields = new ArrayList<>(List.of(
                FormField.of(SIDE),
                FormField.of(UPPER),
                FormField.of(LOWER),
                FormField.of(SIZES),
                FormField.of(REGISTER),
                FormField.ofTheForm(AIM_BY, Aim.ByLimits.MIDDLE.key(), Aim.ByLimits.THIRD.key(), SIZE)));
        if (filled.is(AIM_BY, SIZE)) {
            fields.add(FormField.of(AIM).must());
        }
        fields.addAll(List.of(
                FormField.of(GUARD_BAND), FormField.of(LEAST_CUT), FormField.of(OFFSET_STEP), FormField.of(COMBINE)));
        return fields;
    }

    @Override
    public Map<String, SumValue> made(FormValues filled) {
        return filled.is(AIM_BY, SIZE) ? Map.of() : Map.of(AIM.key(), new SumValue.Text(filled.text(AIM_BY)));
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(OFFSET_CHANGE, SAFE_CUT, STATE, REASON);
    }

    @Override
    public boolean goesIntoTheControl() {
        return true;
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return filled.length(LOWER)
                .flatMap(lower -> filled.length(UPPER).map(upper -> drawn(filled, result, format, lower, upper)));
    }

    private static Picture drawn(FormValues filled, SumResult result, AnswerFormat format, Length lower, Length upper) {
        List<Length> lengths = filled.lengths(SIZES);
        List<String> read = filled.read(SIZES.key());
        List<Sized> sizes = IntStream.range(0, lengths.size())
                .mapToObj(i -> new Sized(lengths.get(i), read.get(i)))
                .toList();
        Sized judged = sizes.stream()
                .max((one, other) -> beyond(one.size(), lower, upper).compareTo(beyond(other.size(), lower, upper)))
                .orElseThrow();
        Length toUpper = upper.minus(judged.size()).abs();
        Length toLower = judged.size().minus(lower).abs();
        Limit near = toUpper.isBelow(toLower) ? Limit.UPPER : Limit.LOWER;
        Length distance = near == Limit.UPPER ? toUpper : toLower;
        return new SizePicture(
                feature(filled),
                filled.unit(),
                Optional.of(new Sized(lower, filled.shown(LOWER))),
                Optional.of(new Sized(upper, filled.shown(UPPER))),
                filled.length(GUARD_BAND).orElse(Length.ZERO),
                IntStream.range(0, sizes.size())
                        .mapToObj(i -> SizePicture.ReadingColumn.of(
                                SizePicture.Kind.TAKEN,
                                sizes.size() == 1 ? "" : String.valueOf(i + 1),
                                "",
                                Optional.of(sizes.get(i)),
                                sizes.get(i).equals(judged)))
                        .toList(),
                Optional.of(judged),
                Optional.of(new SizePicture.Distance(distance, near, format.length(distance))),
                cut(filled, result, format),
                Optional.empty(),
                SizePicture.Said.of(format.words(), feature(filled), true),
                format.words().say("bench.picture.size", filled.shown(SIZES)));
    }

    private static Feature feature(FormValues filled) {
        return filled.is(SIDE, OUTSIDE) ? Feature.DIAMETER : Feature.BORE;
    }

    private static Optional<SizePicture.Cut> cut(FormValues filled, SumResult result, AnswerFormat format) {
        Register register = filled.is(REGISTER, Word.of(Register.RADIUS)) ? Register.RADIUS : Register.DIAMETER;
        return result.find(OFFSET_CHANGE)
                .map(change -> new SizePicture.Cut(
                        format.sized(aim(filled)),
                        register.onDiameter(change.abs()),
                        format.words().say("picture.offset", format.whole().signed(change))));
    }

    private static Length aim(FormValues filled) {
        Limit metalSide = feature(filled).stillCutBeyond();
        Limits limits = Limits.between(written(LOWER, filled), written(UPPER, filled));
        return filled.length(AIM).filter(typed -> filled.is(AIM_BY, SIZE)).orElseGet(() -> Aim.ofKey(
                        filled.text(AIM_BY))
                .orElse(Aim.ByLimits.MIDDLE)
                .of(limits, metalSide));
    }

    private static Written written(Input<Length> limit, FormValues filled) {
        FormValues.Figure typed = filled.figures(limit.key()).get(0);
        return new Written(typed.text(), typed.unit());
    }

    /** How far a size is out of its limits; less than zero inside. */
    private static Length beyond(Length size, Length lower, Length upper) {
        return Length.greatest(List.of(size.minus(upper), lower.minus(size)));
    }
}
