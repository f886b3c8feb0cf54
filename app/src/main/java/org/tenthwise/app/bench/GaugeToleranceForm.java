package org.tenthwise.app.bench;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.ZoneBars;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.gauging.GaugeToleranceSum;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** What a plain plug or ring is made to, beside what it may take of the part's tolerance. */
final class GaugeToleranceForm implements BenchForm {

    private static final Length NOTHING = Length.of("0", Unit.MILLIMETRE);

    @Override
    public BenchKind kind() {
        return BenchKind.GAUGE_TOLERANCE;
    }

    @Override
    public String sum() {
        return GaugeToleranceSum.NAME;
    }

    /** A plug on its handle, with the little it is made to. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 52, 12, 86, 12, 86, 44, 52, 44, 52, 12);
        sketch.thick(Role.LINE, 52, 20, 10, 20, 10, 36, 52, 36);
        sketch.thick(Role.ACCENT, 52, 6, 86, 6);
        sketch.thin(Role.ACCENT, 52, 12, 86, 12);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        return List.of(
                FormField.of(GaugeToleranceSum.CLASS).called("gauge-class"),
                FormField.of(GaugeToleranceSum.SIZE).called("gauge-size"),
                FormField.of(GaugeToleranceSum.PART_TOLERANCE));
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(GaugeToleranceSum.TOLERANCE, GaugeToleranceSum.EACH_MEMBER);
    }

    @Override
    public String called(Output<?> output, FormValues filled) {
        return output.key().equals(GaugeToleranceSum.TOLERANCE.key()) ? "gauge-tolerance" : output.key();
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return result.find(GaugeToleranceSum.TOLERANCE)
                .map(made -> new ZoneBars(
                        Stream.concat(
                                        Stream.of(bar(filled.text(GaugeToleranceSum.CLASS), made, format)),
                                        result
                                                .find(GaugeToleranceSum.EACH_MEMBER)
                                                .map(share ->
                                                        bar(format.words().say("bench.zone.part-share"), share, format))
                                                .stream())
                                .toList(),
                        Optional.of("0"),
                        List.of(),
                        format.spoken(kind(), format.length(made))));
    }

    /** From nothing up to {@code width}. */
    private static ZoneBars.Bar bar(String name, Length width, AnswerFormat format) {
        return new ZoneBars.Bar(name, false, NOTHING, Optional.of(format.whole().greatest(width)), Optional.empty());
    }
}
