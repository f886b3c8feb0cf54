package org.tenthwise.checklists.rules;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Explained;

/** Figures kept as they were typed from a gauge: text in quotes, so that {@code +0.010} keeps its sign and its zero. */
final class QuotedFigures {

    /** Sign, figures before a point or a comma, figures after it; either figures may be missing. */
    private static final Pattern SLIP = Pattern.compile("([+-]?)(?=.*\\d)(\\d*)[.,]?(\\d*)");

    private QuotedFigures() {}

    static Optional<Written> figure(TableKeys keys, String key, Unit unit) {
        return keys.any(key).flatMap(value -> figure(keys, value, unit));
    }

    static Optional<Written> figure(TableKeys keys, RawValue value, Unit unit) {
        Optional<Written> typed =
                value instanceof RawValue.Text text ? Written.typed(text.text(), unit) : Optional.empty();
        if (typed.isEmpty() && unit.isOfAngle() && value instanceof RawValue.Text text) {
            keys.problem(value.spot(), "readings.angle", text.text());
        } else if (typed.isEmpty()) {
            notTyped(keys, value);
        }
        return typed;
    }

    /** The unit a table names for its figures; that of the step where it names none. */
    static Unit unit(TableKeys keys, Unit ofTheStep) {
        return keys.ifAny("unit", key -> keys.word(key, ofTheStep.ofSameKind(), Unit::symbol))
                .orElse(ofTheStep);
    }

    /** A temperature as read from a thermometer. */
    static Optional<Degrees> degrees(TableKeys keys, String key, RawValue value, TemperatureScale scale) {
        if (!(value instanceof RawValue.Text text) || !Written.isPlainDecimal(text.text())) {
            notTyped(keys, value);
            return Optional.empty();
        }
        try {
            return Optional.of(Degrees.of(text.text(), scale));
        } catch (IllegalArgumentException e) {
            keys.problem(value.spot(), "plan.refused", key, Explained.why(e));
            return Optional.empty();
        }
    }

    /** How a figure with a bare point or a decimal comma is written. */
    private static Optional<String> rightly(String typed) {
        Matcher slip = SLIP.matcher(typed.strip());
        if (!slip.matches()) {
            return Optional.empty();
        }
        String before = slip.group(2).isEmpty() ? "0" : slip.group(2);
        String figure = slip.group(1) + (slip.group(3).isEmpty() ? before : before + "." + slip.group(3));
        return Optional.of(figure).filter(Written::isPlainDecimal);
    }

    private static void notTyped(TableKeys keys, RawValue value) {
        if (value instanceof RawValue.Text text) {
            rightly(text.text())
                    .ifPresentOrElse(
                            figure -> keys.problem(value.spot(), "readings.figure.write", text.text(), figure),
                            () -> keys.problem(value.spot(), "readings.figure", text.text()));
        } else {
            keys.problem(value.spot(), "readings.figure.unquoted", value.what());
        }
    }
}
