package org.tenthwise.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.RodPicture;
import org.tenthwise.app.sums.Answer;

/** The size at 20 °C of work and gauge that are warmer or colder. */
final class AtTwentyDegrees implements BenchSum {

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
    public List<Ask> asks(Filled filled) {
        List<Ask> asks = new ArrayList<>(List.of(Ask.length(READING), Ask.of(Ask.Kind.TEMPERATURE, "part_temp")));
        asks.addAll(ExpansionAsks.of("part"));
        asks.add(Ask.of(Ask.Kind.TEMPERATURE, "gauge_temp"));
        asks.addAll(ExpansionAsks.of("gauge"));
        asks.addAll(List.of(
                Ask.of(Ask.Kind.TEMPERATURE, "u_temp").optional(),
                Ask.of(Ask.Kind.EXPANSION, "u_alpha").optional()));
        return asks;
    }

    @Override
    public Filled follow(Filled filled, String id) {
        return ExpansionAsks.follow(filled, id);
    }

    @Override
    public List<String> first(Filled filled) {
        return List.of("size");
    }

    @Override
    public Optional<Picture> picture(Filled filled, Answer answer, Said said) {
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
