package org.tenthwise.app.reference;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumReply;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.model.words.Message;

/** Runs published cases through the sums and sets what comes out beside what is printed. */
public final class Comparison {

    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?");

    private final Sums sums;

    public Comparison(Sums sums) {
        this.sums = sums;
    }

    /** What a figure is of, by the sum it comes from; absent for one that sum does not give. */
    public Optional<Output<?>> output(ComparedFigure figure) {
        String key = Path.of(figure.key()).parts().get(0);
        return sums.descriptions().stream()
                .filter(sum -> sum.name().equals(figure.of().calc()))
                .flatMap(sum -> sum.outputs().stream())
                .<Output<?>>map(output -> output)
                .filter(output -> output.key().equals(key))
                .findFirst();
    }

    /** All that is published on {@code topic}. */
    public TopicResult of(Topic topic) {
        List<PublishedCase> cases = PublishedCases.of(topic);
        return new TopicResult(
                topic,
                cases.size(),
                cases.stream().flatMap(one -> of(one).stream()).toList());
    }

    List<ComparedFigure> of(PublishedCase one) {
        SumReply reply = reply(one);
        return one.published().keySet().stream()
                .map(key -> row(one, key, reply))
                .toList();
    }

    private SumReply reply(PublishedCase one) {
        try {
            return sums.ask(one.calc(), SumInput.written(one.given()));
        } catch (CannotAnswer e) {
            return new Problem(Optional.empty(), e.why());
        }
    }

    private static ComparedFigure row(PublishedCase one, String key, SumReply reply) {
        String published = one.published().get(key);
        Optional<String> worked = reply.match(answer -> Path.of(key).in(answer), problem -> Optional.empty());
        if (worked.isEmpty()) {
            Message nothing = reply.match(
                    answer -> Message.of("reference.nothing", key),
                    problem -> Message.of("reference.refused", problem.why()));
            return new ComparedFigure(one, key, published, nothing, Agreement.DISAGREES, Optional.empty());
        }
        boolean agrees = agrees(one, key, worked.get());
        Message computed =
                Message.of("as-said", agrees ? rounded(worked.get(), published) : told(worked.get(), published));
        Optional<String> aside = Optional.ofNullable(one.aside().get(key));
        if (aside.isPresent()) {
            return new ComparedFigure(
                    one,
                    key,
                    published,
                    computed,
                    agrees ? Agreement.DISAGREES : Agreement.ASIDE,
                    Optional.of(agrees ? Message.of("reference.aside-agrees") : Message.of("as-said", aside.get())));
        }
        return new ComparedFigure(
                one,
                key,
                published,
                computed,
                agrees ? Agreement.AGREES : Agreement.DISAGREES,
                Optional.ofNullable(one.within().get(key))
                        .map(within ->
                                Message.of("reference.within", within, one.why().orElseThrow())));
    }

    private static boolean agrees(PublishedCase one, String key, String worked) {
        String published = one.published().get(key);
        if (!isNumber(published) || !isNumber(worked)) {
            return published.equals(worked);
        }
        if (one.within().containsKey(key)) {
            return new BigDecimal(worked)
                            .subtract(new BigDecimal(published))
                            .abs()
                            .compareTo(one.within().get(key))
                    <= 0;
        }
        return same(rounded(worked, published), published);
    }

    private static String rounded(String worked, String published) {
        return isNumber(worked) && isNumber(published)
                ? new BigDecimal(worked)
                        .setScale(new BigDecimal(published).scale(), RoundingMode.HALF_EVEN)
                        .toPlainString()
                : worked;
    }

    /** As it is told apart from what is published: with a place more where both would look alike. */
    private static String told(String worked, String published) {
        String computed = rounded(worked, published);
        if (!isNumber(worked) || !isNumber(published) || !same(computed, published)) {
            return computed;
        }
        BigDecimal full = new BigDecimal(worked);
        int places = new BigDecimal(published).scale() + 1;
        while (places < full.scale()
                && same(full.setScale(places, RoundingMode.HALF_EVEN).toPlainString(), published)) {
            places++;
        }
        return full.setScale(places, RoundingMode.HALF_EVEN).toPlainString();
    }

    private static boolean same(String one, String other) {
        return new BigDecimal(one).compareTo(new BigDecimal(other)) == 0;
    }

    private static boolean isNumber(String text) {
        return NUMBER.matcher(text).matches();
    }

    /** Where in an answer a figure stands: names and places in lists, with points between. */
    private record Path(List<String> parts) {

        static Path of(String key) {
            return new Path(List.of(key.split("\\.")));
        }

        Optional<String> in(SumResult answer) {
            Optional<SumValue> here = Optional.of(answer.written());
            for (String part : parts) {
                here = here.flatMap(there -> within(there, part));
            }
            return here.filter(SumValue.Text.class::isInstance).map(there -> ((SumValue.Text) there).text());
        }

        private static Optional<SumValue> within(SumValue there, String part) {
            if (there instanceof SumValue.Many many
                    && part.matches("\\d{1,6}")
                    && Integer.parseInt(part) < many.values().size()) {
                return Optional.of(many.values().get(Integer.parseInt(part)));
            }
            return there instanceof SumValue.Fields fields
                    ? Optional.ofNullable(fields.values().get(part))
                    : Optional.empty();
        }
    }
}
