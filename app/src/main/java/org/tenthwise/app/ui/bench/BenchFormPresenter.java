package org.tenthwise.app.ui.bench;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.bench.Ask;
import org.tenthwise.app.bench.Bench;
import org.tenthwise.app.bench.Bench.Outcome;
import org.tenthwise.app.bench.BenchSum;
import org.tenthwise.app.bench.Filled;
import org.tenthwise.app.bench.Noted;
import org.tenthwise.app.bench.Results;
import org.tenthwise.app.bench.Said;
import org.tenthwise.app.sums.Answer;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.bench.BenchFormState.FieldShown;
import org.tenthwise.app.ui.bench.BenchFormState.Found;
import org.tenthwise.app.ui.bench.BenchFormState.Hand;
import org.tenthwise.app.ui.bench.BenchFormState.KeyShown;
import org.tenthwise.app.ui.bench.BenchFormState.Option;
import org.tenthwise.model.quantity.Unit;

/** Puts a bench sum as it is filled in into the words of its form. */
final class BenchFormPresenter {

    /** Most letters of a value on the key of its field. */
    private static final int LONGEST = 18;

    private final BenchSum sum;
    private final Bench bench;
    private final Words words;
    private final Noted noted;

    BenchFormPresenter(BenchSum sum, Bench bench, Words words) {
        this.sum = sum;
        this.bench = bench;
        this.words = words;
        this.noted = new Noted(bench, words);
    }

    /**
     * @param figure what stands on the pad
     * @param next what the key leads to
     * @param note the key for the note
     */
    BenchFormState of(Filled filled, Outcome outcome, Ask inHand, String figure, KeyShown next, KeyShown note) {
        return new BenchFormState(
                words.say("bench.name", sum.kind()),
                words.say(words.key("bench.formula", sum.kind()) + "." + sum.formula(filled)),
                sum.asks(filled).stream()
                        .map(ask -> field(ask, filled, outcome, ask.equals(inHand)))
                        .toList(),
                hand(inHand, filled, outcome, figure),
                found(filled, outcome),
                outcome instanceof Outcome.Done done
                        ? sum.picture(filled, done.answer(), new Said(words, filled.unit()))
                        : Optional.empty(),
                unit(filled),
                next,
                note);
    }

    private FieldShown field(Ask ask, Filled filled, Outcome outcome, boolean inHand) {
        Optional<String> why = refusal(ask, outcome);
        String full = noted.value(ask, filled);
        boolean empty = full.isEmpty();
        String value = !empty
                ? ask.kind().isSeveral() ? shortened(full) : full
                : words.say(ask.needed() ? "bench.empty" : "bench.may-be-empty");
        String shown = why.isPresent() ? words.say("bench.refused", value) : value;
        return new FieldShown(
                ask.id(),
                bench.name(ask),
                shown,
                bench.name(ask) + " " + (empty ? value : full)
                        + why.map(sentence -> ". " + sentence).orElse(""),
                inHand,
                empty,
                why.isPresent());
    }

    /** Of many figures the last are seen. */
    private static String shortened(String text) {
        return text.length() <= LONGEST ? text : "… " + text.substring(text.length() - LONGEST + 2);
    }

    private static Optional<String> refusal(Ask ask, Outcome outcome) {
        return outcome instanceof Outcome.Refused refused
                        && refused.at().filter(ask::equals).isPresent()
                ? Optional.of(refused.sentence())
                : Optional.empty();
    }

    private Hand hand(Ask ask, Filled filled, Outcome outcome, String figure) {
        if (ask.kind() == Ask.Kind.CHOICE) {
            return new Hand.Choose(
                    bench.name(ask),
                    ask.choices().stream()
                            .map(choice ->
                                    new Option(choice, noted.chosen(ask.id(), choice), filled.is(ask.id(), choice)))
                            .toList());
        }
        return new Hand.Pad(
                asked(ask, filled, figure),
                figure,
                noted.symbol(ask, filled),
                refusal(ask, outcome).orElse(ask.needed() ? "" : words.say("bench.may-be-empty")));
    }

    /** Of several figures, the place of the one in hand where it has one, and which it is. */
    private String asked(Ask ask, Filled filled, String figure) {
        if (!ask.kind().isSeveral()) {
            return bench.name(ask);
        }
        int number = filled.several(ask.id()).size() + (figure.isEmpty() ? 1 : 0);
        List<String> places = sum.places(ask, filled);
        return number <= places.size()
                ? words.say("bench.asked.at", bench.name(ask), places.get(number - 1), number, places.size())
                : words.say("bench.asked", bench.name(ask), number);
    }

    private Found found(Filled filled, Outcome outcome) {
        if (outcome instanceof Outcome.Missing missing) {
            return new Found(
                    words.say(
                            "bench.missing",
                            String.join(
                                    ", ",
                                    missing.asks().stream().map(bench::name).toList())),
                    false,
                    List.of(),
                    List.of(),
                    "");
        }
        if (outcome instanceof Outcome.Refused refused) {
            return new Found(refused.sentence(), true, List.of(), List.of(), "");
        }
        Answer answer = ((Outcome.Done) outcome).answer();
        Results results = new Results(words, filled.unit());
        return new Found(
                "",
                false,
                results.of(answer, sum.first(filled)),
                results.notes(answer),
                words.say("bench.basis", answer.basis()));
    }

    private KeyShown unit(Filled filled) {
        if (sum.onlyUnit(filled).isPresent()) {
            return new KeyShown(filled.unit().symbol(), words.say("bench.unit.only"), false);
        }
        Unit other = filled.unit() == Unit.INCH ? Unit.MILLIMETRE : Unit.INCH;
        return new KeyShown(filled.unit().symbol(), words.say("bench.unit.change", other.symbol()), true);
    }
}
