package org.tenthwise.app.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.model.words.Words;

/** The sums of the bench, worked out by the sums of the shop. */
public final class Bench {

    /** How far a bench sum has come. */
    public sealed interface FormOutcome {

        /** Something is still to be typed. */
        record Missing(List<FormField> fields) implements FormOutcome {
            public Missing {
                fields = List.copyOf(fields);
            }
        }

        /**
         * No answer with these figures.
         *
         * @param at what it is about; absent where it is about the whole
         * @param sentence in the names a person knows, with a full stop
         */
        record InputRefused(Optional<FormField> at, String sentence) implements FormOutcome {}

        record Done(SumResult answer) implements FormOutcome {}
    }

    /** Below it stands what each thing that is asked is called, below the other each that is found. */
    static final String ASKED = "bench.ask.";

    static final String FOUND = "bench.result.";

    private final Sums sums;
    private final Words words;

    public Bench(Sums sums, Words words) {
        this.sums = sums;
        this.words = words;
    }

    /** In the order they are offered. */
    public static List<BenchForm> all() {
        return Arrays.stream(BenchKind.values()).map(BenchKind::form).toList();
    }

    /** What is asked, by the name a person knows. */
    public String name(FormField field) {
        return words.say(ASKED + field.called().replace('_', '-'));
    }

    /** What comes of {@code filled}, which is settled. */
    public FormOutcome work(BenchForm form, FormValues filled) {
        List<FormField> missing = form.fields(filled).stream()
                .filter(field -> !field.isChoice())
                .filter(field -> filled.text(field.id()).isBlank() ? field.needed() : !filled.isFinished(field.id()))
                .toList();
        if (!missing.isEmpty()) {
            return new FormOutcome.Missing(missing);
        }
        return sums.ask(form.sum(), form.given(filled))
                .match(FormOutcome.Done::new, problem -> refused(form, filled, problem));
    }

    private FormOutcome refused(BenchForm form, FormValues filled, Problem problem) {
        Optional<FormField> at = problem.key().flatMap(key -> form.fields(filled).stream()
                .filter(field -> field.id().equals(key))
                .findFirst());
        Words named = words.naming(key -> form.fields(filled).stream()
                .filter(field -> field.id().equals(key))
                .findFirst()
                .map(this::name)
                .orElseGet(() -> called(words, key, ASKED, FOUND)));
        return new FormOutcome.InputRefused(at, words.sentence(begun(named.say(problem.why()))));
    }

    /** What a person calls {@code key} in a sentence, by the first of the {@code stems} that has words for it. */
    static String called(Words words, String key, String... stems) {
        String ending = key.replace('_', '-');
        return Stream.of(stems)
                .filter(stem -> words.has(stem + ending))
                .findFirst()
                .map(stem -> words.say(stem + ending))
                .orElse(key.replace('_', ' '));
    }

    /** What begins with the name of a row, as a sentence begins. */
    static String begun(String said) {
        return said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1);
    }
}
