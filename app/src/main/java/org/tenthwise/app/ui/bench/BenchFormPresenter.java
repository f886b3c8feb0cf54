package org.tenthwise.app.ui.bench;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.bench.AnswerFormat;
import org.tenthwise.app.bench.Bench;
import org.tenthwise.app.bench.Bench.FormOutcome;
import org.tenthwise.app.bench.BenchForm;
import org.tenthwise.app.bench.BenchNote;
import org.tenthwise.app.bench.FormField;
import org.tenthwise.app.bench.FormValues;
import org.tenthwise.app.bench.FormValues.Figure;
import org.tenthwise.app.bench.ResultRows;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.ui.bench.BenchFormState.FieldShown;
import org.tenthwise.app.ui.bench.BenchFormState.Found;
import org.tenthwise.app.ui.bench.BenchFormState.Hand;
import org.tenthwise.app.ui.bench.BenchFormState.KeyShown;
import org.tenthwise.app.ui.bench.BenchFormState.Option;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/** Puts a bench sum as it is filled in into the words of its form. */
final class BenchFormPresenter {

    /** Most letters of what was typed in the other unit, on the key of its field. */
    private static final int LONGEST = 18;

    private final BenchForm sum;
    private final Bench bench;
    private final Words words;
    private final BenchNote noted;

    BenchFormPresenter(BenchForm sum, Bench bench, Words words) {
        this.sum = sum;
        this.bench = bench;
        this.words = words;
        this.noted = new BenchNote(bench, words);
    }

    /**
     * @param figure what stands on the pad
     * @param next what the key leads to
     * @param note the key for the note
     */
    BenchFormState of(
            FormValues filled,
            FormOutcome outcome,
            FormField inHand,
            Figure figure,
            boolean all,
            KeyShown next,
            KeyShown note) {
        List<FieldShown> fields = sum.fields(filled).stream()
                .map(ask -> field(ask, filled, outcome, ask.equals(inHand)))
                .toList();
        return new BenchFormState(
                words.say("bench.name", sum.kind()),
                words.say(words.key("bench.formula", sum.kind()) + "." + sum.formula(filled)),
                fields,
                hand(inHand, filled, outcome, figure),
                found(filled, outcome, fields, all),
                outcome instanceof FormOutcome.Done done
                        ? sum.picture(filled, done.answer(), new AnswerFormat(words, filled.unit(), all))
                        : Optional.empty(),
                unit(filled),
                decimals(filled, outcome, all),
                next,
                note);
    }

    private FieldShown field(FormField ask, FormValues filled, FormOutcome outcome, boolean inHand) {
        String why = refusal(ask, outcome).orElse("");
        String full = noted.value(ask, filled);
        boolean empty = full.isEmpty();
        String value = !empty ? full : words.say(ask.needed() ? "bench.empty" : "bench.may-be-empty");
        return new FieldShown(
                ask.id(),
                bench.name(ask),
                value,
                why.isEmpty() ? shortened(noted.typed(ask, filled)) : why,
                words.spoken(bench.name(ask) + " " + value, why),
                inHand,
                empty,
                ask.several(),
                !why.isEmpty());
    }

    /** Of many figures the last are seen. */
    private static String shortened(String text) {
        return text.length() <= LONGEST ? text : "… " + text.substring(text.length() - LONGEST + 2);
    }

    private static Optional<String> refusal(FormField ask, FormOutcome outcome) {
        return outcome instanceof FormOutcome.InputRefused refused
                        && refused.at().filter(ask::equals).isPresent()
                ? Optional.of(refused.sentence())
                : Optional.empty();
    }

    private Hand hand(FormField ask, FormValues filled, FormOutcome outcome, Figure figure) {
        if (ask.isChoice()) {
            return new Hand.Choose(
                    bench.name(ask),
                    ask.choices().stream()
                            .map(choice -> new Option(choice, noted.chosen(ask, choice), filled.is(ask.id(), choice)))
                            .toList());
        }
        return new Hand.Pad(
                asked(ask, filled, figure.text()),
                figure.text(),
                ask.quantity() == Quantity.LENGTH ? figure.unit().symbol() : noted.symbol(ask, filled),
                refusal(ask, outcome)
                        .or(() -> inTheOther(ask, filled, figure))
                        .orElse(ask.needed() ? "" : words.say("bench.may-be-empty")));
    }

    /** What a figure typed before the unit was changed is now. */
    private static Optional<String> inTheOther(FormField ask, FormValues filled, Figure figure) {
        return ask.quantity() == Quantity.LENGTH
                        && !ask.named()
                        && !figure.unit().equals(filled.unit())
                ? figure.length()
                        .map(length ->
                                figure.in(filled.unit()) + " " + filled.unit().symbol())
                : Optional.empty();
    }

    /** Of several figures, the place of the one in hand where it has one, and which it is. */
    private String asked(FormField ask, FormValues filled, String figure) {
        if (!ask.several()) {
            return bench.name(ask);
        }
        int number = filled.several(ask.id()).size() + (figure.isEmpty() ? 1 : 0);
        List<String> places = sum.places(ask, filled);
        return number <= places.size()
                ? words.say("bench.asked.at", bench.name(ask), places.get(number - 1), number, places.size())
                : words.say("bench.asked", bench.name(ask), number);
    }

    private Found found(FormValues filled, FormOutcome outcome, List<FieldShown> fields, boolean all) {
        List<FieldShown> typed = fields.stream().filter(field -> !field.empty()).toList();
        if (outcome instanceof FormOutcome.Missing missing) {
            List<String> names = missing.fields().stream().map(bench::name).toList();
            return new Found(words.say("bench.missing", names), false, typed, List.of(), List.of(), List.of(), "");
        }
        if (outcome instanceof FormOutcome.InputRefused refused) {
            String ofTheWhole = refused.at().isPresent() ? "" : refused.sentence();
            return new Found(ofTheWhole, true, typed, List.of(), List.of(), List.of(), "");
        }
        SumResult answer = ((FormOutcome.Done) outcome).answer();
        ResultRows results = new ResultRows(sum, words);
        return new Found(
                "",
                false,
                List.of(),
                sum.goesIntoTheControl() ? results.notes(answer) : List.of(),
                results.of(answer, filled, all),
                sum.goesIntoTheControl() ? List.of() : results.notes(answer),
                words.say("bench.basis", words.say(answer.basis())));
    }

    /** Live where there is more to show than is shown first. */
    private KeyShown decimals(FormValues filled, FormOutcome outcome, boolean all) {
        ResultRows results = new ResultRows(sum, words);
        boolean more = outcome instanceof FormOutcome.Done done
                && !results.of(done.answer(), filled, true).equals(results.of(done.answer(), filled, false));
        return new KeyShown(
                words.say("bench.decimals"), words.say(all ? "bench.decimals.fewer" : "bench.decimals.all"), more);
    }

    private KeyShown unit(FormValues filled) {
        if (sum.onlyUnit(filled).isPresent()) {
            return new KeyShown(filled.unit().symbol(), words.say("bench.unit.only"), false);
        }
        Unit other = filled.unit() == Unit.INCH ? Unit.MILLIMETRE : Unit.INCH;
        return new KeyShown(filled.unit().symbol(), words.say("bench.unit.change", other.symbol()), true);
    }
}
