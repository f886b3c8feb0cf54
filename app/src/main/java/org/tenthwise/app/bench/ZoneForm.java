package org.tenthwise.app.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.ZoneBars;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.fit.LimitsSum;
import org.tenthwise.app.sums.fit.ZoneInputs;
import org.tenthwise.model.quantity.Unit;

/** Limits of a diameter with a tolerance zone. */
final class ZoneForm implements BenchForm {

    static final String PART = "part";
    static final String HOLE = "hole";
    static final String SHAFT = "shaft";
    static final String LETTER = "letter";
    static final String GRADE = "grade";

    @Override
    public BenchKind kind() {
        return BenchKind.ZONE;
    }

    @Override
    public String sum() {
        return LimitsSum.NAME;
    }

    /** Two zones on a nominal line. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.area(Role.ZONE, 18, 10, 40, 10, 40, 30, 18, 30);
        sketch.thick(Role.LINE, 18, 10, 40, 10, 40, 30, 18, 30, 18, 10);
        sketch.area(Role.ZONE, 56, 36, 78, 36, 78, 50, 56, 50);
        sketch.thick(Role.ACCENT, 56, 36, 78, 36, 78, 50, 56, 50, 56, 36);
        sketch.thin(Role.LINE, 4, 30, 92, 30);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        return List.of(
                FormField.of(ZoneInputs.DIAMETER),
                FormField.ofTheForm(PART, HOLE, SHAFT),
                ZoneFields.letter(LETTER, !filled.is(PART, SHAFT)),
                ZoneFields.grade(GRADE, !filled.is(PART, SHAFT)));
    }

    @Override
    public Map<String, SumValue> made(FormValues filled) {
        return Map.of(LimitsSum.ZONE.key(), new SumValue.Text(filled.text(LETTER) + filled.text(GRADE)));
    }

    /** The standard gives its deviations in millimetres. */
    @Override
    public Optional<Unit> onlyUnit(FormValues filled) {
        return Optional.of(Unit.MILLIMETRE);
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(LimitsSum.GREATEST);
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return filled.length(ZoneInputs.DIAMETER)
                .map(nominal -> new ZoneBars(
                        List.of(new ZoneBars.Bar(
                                filled.text(LETTER) + filled.text(GRADE),
                                filled.is(PART, HOLE),
                                nominal,
                                result.find(LimitsSum.GREATEST).map(format::greatest),
                                result.find(LimitsSum.LEAST).map(format::least))),
                        Optional.of("⌀" + filled.text(ZoneInputs.DIAMETER)),
                        between(result, format).stream().toList(),
                        format.words().say("bench.picture.zone", filled.text(ZoneInputs.DIAMETER))));
    }

    private static Optional<ZoneBars.Between> between(SumResult result, AnswerFormat format) {
        return result.find(LimitsSum.LEAST).flatMap(least -> result.find(LimitsSum.GREATEST)
                .map(greatest -> new ZoneBars.Between(
                        format.words().say("bench.tolerance"), least, greatest, format.length(greatest.minus(least)))));
    }
}
