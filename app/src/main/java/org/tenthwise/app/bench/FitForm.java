package org.tenthwise.app.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.ZoneBars;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** The play of a plug in its bore, or of two zones on one diameter; warm where they are not at 20 °C. */
final class FitForm implements BenchForm {

    static final String BY = "fit_by";
    static final String SIZES = "sizes";
    private static final String ZONES = "zones";
    private static final String WARM = "warm";
    private static final String DIAMETER = "diameter";
    static final String BORE_LEAST = "bore_least";
    static final String BORE_GREATEST = "bore_greatest";
    static final String PLUG_LEAST = "plug_least";
    static final String PLUG_GREATEST = "plug_greatest";

    @Override
    public BenchKind kind() {
        return BenchKind.FIT;
    }

    @Override
    public String sum() {
        return "fit";
    }

    @Override
    public List<FormField> asks(FormValues filled) {
        List<FormField> asks =
                new ArrayList<>(List.of(FormField.choice(BY, SIZES, ZONES).aside()));
        if (filled.is(BY, ZONES)) {
            asks.addAll(List.of(
                    FormField.length(DIAMETER),
                    ZoneFields.letter("hole_letter", true),
                    ZoneFields.grade("hole_grade", true),
                    ZoneFields.letter("shaft_letter", false),
                    ZoneFields.grade("shaft_grade", false)));
        } else {
            asks.addAll(List.of(
                    FormField.length(BORE_GREATEST),
                    FormField.length(BORE_LEAST),
                    FormField.length(PLUG_GREATEST),
                    FormField.length(PLUG_LEAST)));
        }
        asks.add(FormField.choice(WARM, "no", "yes").aside());
        if (filled.is(WARM, "yes")) {
            asks.add(FormField.of(FormField.FieldKind.TEMPERATURE, "bore_temp"));
            asks.addAll(ExpansionFields.of("bore"));
            asks.add(FormField.of(FormField.FieldKind.TEMPERATURE, "plug_temp"));
            asks.addAll(ExpansionFields.of("plug"));
        }
        return asks;
    }

    @Override
    public FormValues follow(FormValues filled, String id) {
        return ExpansionFields.follow(filled, id);
    }

    @Override
    public Map<String, SumValue> made(FormValues filled) {
        Map<String, SumValue> made = new LinkedHashMap<>();
        if (filled.is(BY, ZONES)) {
            made.put("hole_zone", new SumValue.Plain(filled.text("hole_letter") + filled.text("hole_grade")));
            made.put("shaft_zone", new SumValue.Plain(filled.text("shaft_letter") + filled.text("shaft_grade")));
        }
        return made;
    }

    /** The standard gives its zones in millimetres. */
    @Override
    public Optional<Unit> onlyUnit(FormValues filled) {
        return filled.is(BY, ZONES) ? Optional.of(Unit.MILLIMETRE) : Optional.empty();
    }

    @Override
    public List<String> first(FormValues filled) {
        return List.of("kind", "clearance_least", "clearance_greatest");
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult answer, AnswerFormat said) {
        return said.length(answer, "clearance_greatest")
                .flatMap(most -> said.length(answer, "clearance_least")
                        .map(least -> filled.is(BY, ZONES)
                                ? zones(filled, answer, said, most, least)
                                : sizes(filled, said, most, least)))
                .flatMap(picture -> picture);
    }

    private static Optional<Picture> sizes(FormValues filled, AnswerFormat said, Length most, Length least) {
        return filled.length(BORE_GREATEST).flatMap(boreMost -> filled.length(BORE_LEAST)
                .flatMap(boreLeast -> filled.length(PLUG_GREATEST).flatMap(plugMost -> filled.length(PLUG_LEAST)
                        .map(plugLeast -> drawn(
                                said,
                                new Length[] {boreMost, boreLeast, plugMost, plugLeast},
                                Optional.empty(),
                                most,
                                least)))));
    }

    /** Where the answer says nothing of the sizes, the zones are not drawn. */
    private static Optional<Picture> zones(
            FormValues filled, SumResult answer, AnswerFormat said, Length most, Length least) {
        return said.length(answer, BORE_GREATEST).flatMap(boreMost -> said.length(answer, BORE_LEAST)
                .flatMap(boreLeast -> said.length(answer, PLUG_GREATEST)
                        .flatMap(plugMost -> said.length(answer, PLUG_LEAST)
                                .map(plugLeast -> drawn(
                                        said,
                                        new Length[] {boreMost, boreLeast, plugMost, plugLeast},
                                        filled.length(DIAMETER),
                                        most,
                                        least)))));
    }

    private static Picture drawn(
            AnswerFormat said, Length[] sizes, Optional<Length> nominal, Length most, Length least) {
        ZoneBars.Bar bore = new ZoneBars.Bar(
                said.words().say("bench.bore"),
                true,
                nominal.orElse(sizes[1]),
                Optional.of(said.sized(sizes[0])),
                Optional.of(said.sized(sizes[1])));
        ZoneBars.Bar plug = new ZoneBars.Bar(
                said.words().say("bench.plug"),
                false,
                nominal.orElse(sizes[1]),
                Optional.of(said.sized(sizes[2])),
                Optional.of(said.sized(sizes[3])));
        return new ZoneBars(
                List.of(bore, plug),
                nominal.map(said::sized).map(line -> "⌀" + line.figures()),
                List.of(
                        new ZoneBars.Between(
                                said.words().say("bench.play.most"), sizes[3], sizes[0], said.signed(most)),
                        new ZoneBars.Between(
                                said.words().say("bench.play.least"), sizes[2], sizes[1], said.signed(least))),
                said.words().say("bench.picture.fit", said.signed(least), said.signed(most)));
    }
}
