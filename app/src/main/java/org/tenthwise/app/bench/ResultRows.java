package org.tenthwise.app.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.OutputValue;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.cutting.NextCutSum;
import org.tenthwise.app.sums.gauging.GaugeToleranceSum;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Words;

/** Reads a result out, each value with its name of the trade and its unit. */
public final class ResultRows {

    /** What is typed on as it stands, and what is finer than a gauge shows. */
    private static final Set<String> WHOLE = Set.of(
            NextCutSum.OFFSET_CHANGE.key(), GaugeToleranceSum.TOLERANCE.key(), GaugeToleranceSum.EACH_MEMBER.key());

    private final BenchForm form;
    private final Words words;

    public ResultRows(BenchForm form, Words words) {
        this.form = form;
        this.words = words;
    }

    /**
     * All that is read out: what comes first by the form in that order, then the others.
     *
     * @param all whether with every decimal
     */
    public List<ResultRow> of(SumResult result, FormValues filled, boolean all) {
        AnswerFormat format = new AnswerFormat(words, filled.unit(), all);
        List<Output<?>> first = form.first(filled);
        return result.values().all().stream()
                .filter(value -> form.shows(value.output()))
                .sorted(Comparator.comparingInt(value -> rank(first, value.output())))
                .flatMap(value -> read(value, filled, format)
                        .map(text -> Stream.of(row(value.output(), filled, text)))
                        .orElseGet(() -> form.rows(value.output(), result, format).stream()))
                .toList();
    }

    private static int rank(List<Output<?>> first, Output<?> output) {
        List<String> keys = first.stream().map(Output::key).toList();
        int at = keys.indexOf(output.key());
        return at < 0 ? keys.size() : at;
    }

    private ResultRow row(Output<?> output, FormValues filled, String text) {
        return new ResultRow(
                output.key(),
                words.say(Bench.FOUND + form.called(output, filled).replace('_', '-')),
                text);
    }

    /** Absent for a list. */
    private Optional<String> read(OutputValue<?> value, FormValues filled, AnswerFormat format) {
        Output<?> output = value.output();
        if (value.value() instanceof Length length) {
            AnswerFormat as = WHOLE.contains(output.key()) ? format.whole() : format;
            RoundingMode way = SafeSide.of(output);
            return Optional.of(as.withUnit(output.signed() ? as.signed(length, way) : as.length(length, way)));
        }
        if (output.quantity() == Quantity.ANGLE && value.value() instanceof BigDecimal degrees) {
            return Optional.of(words.say("bench.degrees", format.angle(degrees, form.places(output))));
        }
        if (value.value() instanceof Double || output.quantity() == Quantity.FIGURE) {
            return figure(value)
                    .map(figure -> format.figure(figure, output.signed()))
                    .map(read -> output.quantity() == Quantity.ANGLE
                            ? words.say("bench.degrees", read)
                            : (read + " " + form.symbol(output, filled)).strip());
        }
        return switch (output.quantity()) {
            case WORD -> Optional.of(words.say("bench.word." + value.text(format.unit())));
            case COUNT -> Optional.of(value.text(format.unit()));
            default -> Optional.empty();
        };
    }

    private static Optional<BigDecimal> figure(OutputValue<?> value) {
        return value.value() instanceof Double figure
                ? Optional.of(BigDecimal.valueOf(figure))
                : value.value() instanceof BigDecimal exact ? Optional.of(exact) : Optional.empty();
    }

    /** The notes, with results called by their names. */
    public List<String> notes(SumResult result) {
        Words named = words.naming(key -> Bench.called(words, key, Bench.FOUND, Bench.ASKED));
        return result.notes().stream()
                .map(named::say)
                .map(Bench::begun)
                .map(words::sentence)
                .toList();
    }
}
