package org.tenthwise.app.bench;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SizePicture;
import org.tenthwise.app.picture.SizePicture.Sized;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.roughness.RoughnessSum;
import org.tenthwise.model.compute.roughness.AcceptanceRule;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Word;

/** Whether the roughness values of a surface are accepted, and how many are still to measure. */
final class RoughnessForm implements BenchForm {

    /** Figures of any one unit: which of them it is does not matter to the rule. */
    private static final Unit ANY = Unit.named("µm");

    @Override
    public BenchKind kind() {
        return BenchKind.ROUGHNESS;
    }

    @Override
    public String sum() {
        return RoughnessSum.NAME;
    }

    /** A rough profile below its limit. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thin(Role.LINE, 4, 10, 92, 10);
        sketch.thick(Role.ACCENT, 4, 46, 16, 22, 24, 44, 38, 18, 48, 48, 60, 26, 68, 42, 80, 20, 92, 46);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        return List.of(
                FormField.of(RoughnessSum.RULE).called("roughness-rule"),
                FormField.of(RoughnessSum.LIMIT).called("roughness-limit-um"),
                FormField.of(RoughnessSum.VALUES).called("roughness-values"));
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(RoughnessSum.VERDICT, RoughnessSum.STILL_TO_MEASURE, RoughnessSum.ALLOWED_OVER);
    }

    @Override
    public String called(Output<?> output, FormValues filled) {
        return output.key().equals(RoughnessSum.VERDICT.key()) ? "roughness-state" : output.key();
    }

    @Override
    public String formula(FormValues filled) {
        return AcceptanceRule.ofKey(filled.text(RoughnessSum.RULE))
                .map(Word::of)
                .orElseThrow();
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return filled.number(RoughnessSum.LIMIT.key())
                .map(limit -> drawn(sized(limit), filled.several(RoughnessSum.VALUES), format));
    }

    private static Picture drawn(Sized limit, List<String> values, AnswerFormat format) {
        List<Sized> read =
                values.stream().map(BigDecimal::new).map(RoughnessForm::sized).toList();
        Sized highest = read.stream().max(Comparator.comparing(Sized::size)).orElseThrow();
        return new SizePicture(
                Optional.empty(),
                ANY,
                Optional.empty(),
                Optional.of(limit),
                new Length(BigDecimal.ZERO, ANY.kind()),
                IntStream.range(0, read.size())
                        .mapToObj(i -> SizePicture.ReadingColumn.of(
                                SizePicture.Kind.TAKEN,
                                String.valueOf(i + 1),
                                "",
                                Optional.of(read.get(i)),
                                read.get(i).equals(highest)))
                        .toList(),
                Optional.of(highest),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                true,
                SizePicture.Beside.NOTHING,
                SizePicture.Said.of(format.words(), "", ""),
                format.words().say("bench.picture.roughness", String.join(" ", values)));
    }

    private static Sized sized(BigDecimal figure) {
        return new Sized(Length.of(figure, ANY), figure.toPlainString());
    }
}
