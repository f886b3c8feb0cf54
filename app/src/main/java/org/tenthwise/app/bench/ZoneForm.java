package org.tenthwise.app.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.ZoneBars;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.model.quantity.Unit;

/** Limits of a diameter with a tolerance zone. */
final class ZoneForm implements BenchForm {

    static final String PART = "part";
    static final String HOLE = "hole";
    static final String SHAFT = "shaft";
    static final String LETTER = "letter";
    static final String GRADE = "grade";
    static final String DIAMETER = "diameter";

    @Override
    public BenchKind kind() {
        return BenchKind.ZONE;
    }

    @Override
    public String sum() {
        return "limits";
    }

    @Override
    public List<FormField> asks(FormValues filled) {
        return List.of(
                FormField.length(DIAMETER),
                FormField.choice(PART, HOLE, SHAFT).aside(),
                ZoneFields.letter(LETTER, !filled.is(PART, SHAFT)),
                ZoneFields.grade(GRADE, !filled.is(PART, SHAFT)));
    }

    @Override
    public Map<String, SumValue> made(FormValues filled) {
        return Map.of("zone", new SumValue.Plain(filled.text(LETTER) + filled.text(GRADE)));
    }

    /** The standard gives its deviations in millimetres. */
    @Override
    public Optional<Unit> onlyUnit(FormValues filled) {
        return Optional.of(Unit.MILLIMETRE);
    }

    @Override
    public List<String> first(FormValues filled) {
        return List.of("greatest");
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult answer, AnswerFormat said) {
        return filled.length(DIAMETER)
                .map(nominal -> new ZoneBars(
                        List.of(new ZoneBars.Bar(
                                filled.text(LETTER) + filled.text(GRADE),
                                filled.is(PART, HOLE),
                                nominal,
                                said.length(answer, "greatest").map(said::sized),
                                said.length(answer, "least").map(said::sized))),
                        Optional.of("⌀" + filled.text(DIAMETER)),
                        List.of(),
                        said.words().say("bench.picture.zone", filled.text(DIAMETER))));
    }
}
