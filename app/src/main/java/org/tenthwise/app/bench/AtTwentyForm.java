package org.tenthwise.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.RodPicture;
import org.tenthwise.app.sums.SumResult;

/** The size at 20 °C of work and gauge that are warmer or colder. */
final class AtTwentyForm implements BenchForm {

    static final String READING = "reading";

    @Override
    public BenchKind kind() {
        return BenchKind.TEMPERATURE;
    }

    @Override
    public String sum() {
        return "at-20c";
    }

    @Override
    public List<FormField> asks(FormValues filled) {
        List<FormField> asks = new ArrayList<>(
                List.of(FormField.length(READING), FormField.of(FormField.FieldKind.TEMPERATURE, "part_temp")));
        asks.addAll(ExpansionFields.of("part"));
        asks.add(FormField.of(FormField.FieldKind.TEMPERATURE, "gauge_temp"));
        asks.addAll(ExpansionFields.of("gauge"));
        asks.addAll(List.of(
                FormField.of(FormField.FieldKind.TEMPERATURE, "u_temp").optional(),
                FormField.of(FormField.FieldKind.EXPANSION, "u_alpha").optional()));
        return asks;
    }

    @Override
    public FormValues follow(FormValues filled, String id) {
        return ExpansionFields.follow(filled, id);
    }

    @Override
    public List<String> first(FormValues filled) {
        return List.of("size");
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult answer, AnswerFormat said) {
        return said.length(answer, "size").flatMap(size -> said.length(answer, "correction")
                .map(correction -> new RodPicture(
                        said.words().say("bench.rod.read", filled.text("part_temp")),
                        filled.text(READING),
                        said.words().say("bench.rod.at-20"),
                        said.length(size),
                        correction,
                        said.signed(correction),
                        said.words().say("bench.picture.rod", filled.text(READING), said.length(size)))));
    }
}
