package org.tenthwise.app.bench;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumReply;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.model.words.Words;

/** The sums of the bench, worked out by the sums of the shop. */
public final class Bench {

    /** How far a bench sum has come. */
    public sealed interface FormOutcome {

        /** Something is still to be typed. */
        record Missing(List<FormField> asks) implements FormOutcome {
            public Missing {
                asks = List.copyOf(asks);
            }
        }

        /**
         * No answer with these figures.
         *
         * @param at what it is about; absent where it is about the whole
         * @param sentence in the names a person knows
         */
        record Refused(Optional<FormField> at, String sentence) implements FormOutcome {}

        record Done(SumResult answer) implements FormOutcome {}
    }

    private static final Pattern KEY = Pattern.compile("\\b[a-z]+(?:_[a-z0-9]+)+\\b");

    private final Sums sums;
    private final Words words;

    public Bench(Sums sums, Words words) {
        this.sums = sums;
        this.words = words;
    }

    /** In the order they are offered. */
    public static List<BenchForm> all() {
        return List.of(
                new OverWiresForm(),
                new NextCutForm(),
                new RunOutForm(),
                new FitForm(),
                new AtTwentyForm(),
                new DrillSetForm(),
                new ThreadLimitsForm(),
                new ZoneForm());
    }

    public static BenchForm of(BenchKind kind) {
        return all().stream().filter(sum -> sum.kind() == kind).findFirst().orElseThrow();
    }

    /** What is asked, by the name a person knows. */
    public String name(FormField ask) {
        return words.say("bench.ask." + ask.id().replace('_', '-'));
    }

    /** What comes of {@code filled}, which is settled. */
    public FormOutcome work(BenchForm sum, FormValues filled) {
        List<FormField> missing = sum.asks(filled).stream()
                .filter(ask -> ask.kind() != FormField.FieldKind.CHOICE)
                .filter(ask -> filled.text(ask.id()).isBlank() ? ask.needed() : !filled.isFinished(ask.id()))
                .toList();
        if (!missing.isEmpty()) {
            return new FormOutcome.Missing(missing);
        }
        SumReply reply = sums.ask(sum.sum(), sum.given(filled));
        return reply instanceof Problem problem
                ? refused(sum, filled, problem)
                : new FormOutcome.Done((SumResult) reply);
    }

    private FormOutcome refused(BenchForm sum, FormValues filled, Problem problem) {
        Optional<FormField> at = problem.key().flatMap(key -> sum.asks(filled).stream()
                .filter(ask -> ask.id().equals(key))
                .findFirst());
        String first = at.filter(ask -> problem.words().startsWith(ask.id() + " "))
                .map(ask -> name(ask) + problem.words().substring(ask.id().length()))
                .orElse(problem.words());
        for (FormField ask : sum.asks(filled)) {
            first = first.replaceAll("\\b" + ask.id() + "\\b(?= is |, which is)", Matcher.quoteReplacement(name(ask)));
        }
        String named =
                KEY.matcher(first).replaceAll(found -> Matcher.quoteReplacement(named(sum, filled, found.group())));
        return new FormOutcome.Refused(at, named.endsWith(".") ? named : named + ".");
    }

    private String named(BenchForm sum, FormValues filled, String key) {
        return sum.asks(filled).stream()
                .filter(ask -> ask.id().equals(key))
                .map(this::name)
                .findFirst()
                .orElse(key.replace('_', ' '));
    }
}
