package org.tenthwise.app.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.reference.PublishedCase;
import org.tenthwise.app.reference.PublishedCases;
import org.tenthwise.app.reference.Topic;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/** The cases that came with the program, each with its source, typed into the forms of the bench. */
class PublishedFormsTest {

    private static final String UNIT = "unit";

    private final Words words = Words.of(Locale.ENGLISH);
    private final Sums sums = Handbook.sums();
    private final Bench bench = new Bench(sums, words);

    private static List<PublishedCase> cases(BenchForm form) {
        return Arrays.stream(Topic.values())
                .flatMap(topic -> PublishedCases.of(topic).stream())
                .filter(one -> one.calc().equals(form.sum()))
                .toList();
    }

    /** What is typed gives the very answer of the sum, and a case that fits no way of the form is seen. */
    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"ZONE", "FIT", "TEMPERATURE", "THREAD_LIMITS", "WIRES", "RUN_OUT", "DRILL_SET", "NEXT_CUT"})
    void whatIsTypedComesToWhatTheSumComesTo(BenchKind kind) {
        List<String> unfit = new ArrayList<>();
        for (PublishedCase one : cases(kind.form())) {
            Optional<FormValues> filled = filled(kind.form(), one);
            if (filled.isEmpty()) {
                unfit.add(one.name());
                continue;
            }
            SumResult typed = assertInstanceOf(
                            Bench.FormOutcome.Done.class, bench.work(kind.form(), filled.orElseThrow()), one::toString)
                    .answer();
            SumResult asked = (SumResult) sums.ask(one.calc(), SumInput.written(one.given()));
            assertEquals(asked.written(), typed.written(), one::toString);
            assertEquals(asked.notes(), typed.notes());
        }
        assertEquals(List.of(), unfit);
        assertTrue(!cases(kind.form()).isEmpty());
    }

    private static Unit unit(SumValue text) {
        return text instanceof SumValue.Text one && one.text().equals("in") ? Unit.INCH : Unit.MILLIMETRE;
    }

    /** In that way of the form that asks for what the case gives. */
    private static Optional<FormValues> filled(BenchForm form, PublishedCase one) {
        Map<String, SumValue> given = new LinkedHashMap<>(one.given());
        Unit unit = given.containsKey(UNIT) ? unit(given.remove(UNIT)) : Unit.MILLIMETRE;
        FormValues typed = FormValues.nothing(unit);
        for (Map.Entry<String, SumValue> figure : given.entrySet()) {
            typed = typed.with(figure.getKey(), text(figure.getValue()));
        }
        FormValues start = form.settled(typed);
        return Stream.concat(
                        Stream.of(start),
                        turned(form, start).flatMap(way -> Stream.concat(Stream.of(way), turned(form, way))))
                .filter(way -> form.given(way).values().keySet().containsAll(given.keySet()))
                .findFirst();
    }

    private static Stream<FormValues> turned(BenchForm form, FormValues from) {
        return form.fields(from).stream()
                .filter(field -> field.isChoice() && !field.given())
                .flatMap(field -> field.choices().stream().map(choice -> form.settled(from.with(field.id(), choice))));
    }

    /** As it is typed on the pad, which puts a zero before a point. */
    private static String text(SumValue value) {
        return value instanceof SumValue.Many many
                ? many.values().stream().map(PublishedFormsTest::text).collect(Collectors.joining(" "))
                : ((SumValue.Text) value).text().replaceFirst("^(-?)\\.", "$10.");
    }
}
