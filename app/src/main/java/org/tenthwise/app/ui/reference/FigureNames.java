package org.tenthwise.app.ui.reference;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.reference.ComparedFigure;
import org.tenthwise.app.reference.Comparison;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.model.words.Words;

/** What a figure of a published case is called, and what it is in. */
final class FigureNames {

    private static final String OWN = "reference.result.";
    private static final String OF_THE_BENCH = "bench.result.";

    private final Comparison comparison;
    private final Words words;

    FigureNames(Comparison comparison, Words words) {
        this.comparison = comparison;
        this.words = words;
    }

    /** By the words of the trade; the places in a list counted from 1. */
    String name(String key) {
        List<String> parts = Arrays.asList(key.split("\\."));
        String name = named(parts.get(0));
        for (String part : parts.subList(1, parts.size())) {
            name = part.matches("\\d+")
                    ? words.say("reference.key.numbered", name, Integer.parseInt(part) + 1)
                    : words.say("reference.key", name, named(part));
        }
        return name;
    }

    private String named(String part) {
        String ending = part.replace('_', '-');
        return Stream.of(OWN, OF_THE_BENCH)
                .filter(stem -> words.has(stem + ending))
                .findFirst()
                .map(stem -> words.say(stem + ending))
                .orElse(part.replace('_', ' '));
    }

    /** The figure with its unit, where it has one. */
    String withUnit(ComparedFigure row, String figure) {
        return comparison
                .output(row)
                .filter(any -> figure.matches("[+-]?\\.?\\d.*"))
                .flatMap(output -> unit(row, output))
                .map(unit -> figure + (unit.equals("°") ? "" : " ") + unit)
                .orElse(figure);
    }

    private Optional<String> unit(ComparedFigure row, Output<?> output) {
        if (output.quantity() == Quantity.LENGTH) {
            return Optional.ofNullable(row.of().given().get("unit"))
                    .filter(SumValue.Text.class::isInstance)
                    .map(unit -> ((SumValue.Text) unit).text());
        }
        return Stream.of(Quantity.ANGLE, Quantity.TEMPERATURE, Quantity.EXPANSION)
                .filter(output.quantity()::equals)
                .findFirst()
                .map(quantity -> words.say("bench.unit", quantity));
    }
}
