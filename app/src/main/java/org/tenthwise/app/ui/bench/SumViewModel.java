package org.tenthwise.app.ui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.bench.Bench;
import org.tenthwise.app.bench.Bench.FormOutcome;
import org.tenthwise.app.bench.BenchForm;
import org.tenthwise.app.bench.BenchKind;
import org.tenthwise.app.bench.BenchNote;
import org.tenthwise.app.bench.FormField;
import org.tenthwise.app.bench.FormValues;
import org.tenthwise.app.bench.FormValues.Figure;
import org.tenthwise.app.ui.bench.BenchFormState.KeyShown;
import org.tenthwise.app.ui.keys.KeypadViewModel;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/**
 * The form of one bench sum: what is filled in, the field in hand, and what comes of it, worked out anew with every
 * character. What was typed stays as typed, whatever the sum makes of it.
 */
public final class SumViewModel implements Typing {

    /** Where a sum can be noted. */
    public interface NoteBook {

        /**
         * @param kept is handed what to say of where the note went
         * @param either called whether it was kept or not
         */
        void note(String text, Consumer<String> kept, Runnable either);
    }

    private final BenchForm sum;
    private final Bench bench;
    private final Words words;
    private final Optional<NoteBook> book;
    private final BenchFormPresenter showing;
    private final KeypadViewModel pad = new KeypadViewModel(text -> {});
    private final ReadOnlyObjectWrapper<BenchFormState> shown = new ReadOnlyObjectWrapper<>();
    /** Of several figures, those before the one on the pad. */
    private final List<Figure> before = new ArrayList<>();

    private FormValues filled;
    private FormField inHand;
    /** The figure on the pad is in this unit, which is that of the form unless it was typed before that was changed. */
    private Unit onPad;
    /** Whether the next character begins another figure. */
    private boolean fresh = true;

    private boolean loading;
    private boolean noting;
    private boolean allDecimals;
    private String noteKept = "";

    /** @param book absent without a run */
    public SumViewModel(BenchForm sum, FormValues start, Bench bench, Words words, Optional<NoteBook> book) {
        this.sum = sum;
        this.bench = bench;
        this.words = words;
        this.book = book;
        this.showing = new BenchFormPresenter(sum, bench, words);
        this.filled = sum.settled(start);
        this.onPad = filled.unit();
        this.inHand = missing()
                .findFirst()
                .or(() -> sum.fields(filled).stream()
                        .filter(ask -> ask.needed() && !ask.isChoice())
                        .reduce((earlier, later) -> later))
                .orElseThrow();
        pad.typedProperty().subscribe((was, is) -> typed());
        load();
    }

    public BenchKind kind() {
        return sum.kind();
    }

    public ReadOnlyObjectProperty<BenchFormState> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** What is filled in. */
    public FormValues filled() {
        return filled;
    }

    public void goTo(String id) {
        sum.fields(filled).stream()
                .filter(ask -> ask.id().equals(id))
                .findFirst()
                .ifPresent(ask -> {
                    inHand = ask;
                    load();
                });
    }

    /** Chooses for the field in hand, if it is one to choose for. */
    public void choose(String choice) {
        if (inHand.choices().contains(choice)) {
            fill(filled.with(inHand.id(), choice));
        }
    }

    /** To the next figure of several, or to the next that is missing, or to the next field. */
    public void next() {
        if (takesAnother()) {
            before.add(onPad());
            empty();
            show();
        } else {
            goTo(following().id());
        }
    }

    /** The same figures in the other unit; what is typed from now on is in that one. */
    public void changeUnit() {
        if (sum.onlyUnit(filled).isEmpty()) {
            filled = sum.settled(filled.in(filled.unit() == Unit.INCH ? Unit.MILLIMETRE : Unit.INCH));
            changed();
            load();
        }
    }

    /** Every decimal of what comes out, or as many as a gauge shows. */
    public void changeDecimals() {
        allDecimals = !allDecimals;
        show();
    }

    public void note() {
        if (book.isEmpty()
                || noting
                || !noteKept.isEmpty()
                || !(bench.work(sum, filled) instanceof FormOutcome.Done done)) {
            return;
        }
        FormValues taken = filled;
        noting = true;
        book.ifPresent(open -> open.note(
                new BenchNote(bench, words).of(sum, taken, done.answer()),
                kept -> {
                    noteKept = taken.equals(filled) ? kept : "";
                    show();
                },
                () -> noting = false));
    }

    public void sign() {
        if (!inHand.isChoice()) {
            begin();
            pad.sign();
        }
    }

    @Override
    public void character(String character) {
        if (!inHand.isChoice()) {
            begin();
            pad.character(character);
        }
    }

    private void begin() {
        if (fresh && !pad.typedProperty().get().isEmpty()) {
            if (inHand.several()) {
                before.add(onPad());
            }
            empty();
        }
        fresh = false;
    }

    private Figure onPad() {
        return new Figure(pad.typedProperty().get(), onPad);
    }

    /** Clears the pad for a figure in the unit of the form. */
    private void empty() {
        put(new Figure("", filled.unit()));
    }

    @Override
    public void takeBack() {
        fresh = false;
        if (pad.typedProperty().get().isEmpty() && !before.isEmpty()) {
            put(before.remove(before.size() - 1));
            show();
        } else {
            pad.takeBack();
            if (pad.typedProperty().get().isEmpty()) {
                empty();
                show();
            }
        }
    }

    /** Takes the whole figure away that stands on the pad; of several the others stay. */
    public void clear() {
        fresh = false;
        pad.clear();
        empty();
        show();
    }

    @Override
    public void enter() {
        next();
    }

    private boolean takesAnother() {
        int places = sum.places(inHand, filled).size();
        return inHand.several() && !pad.typedProperty().get().isEmpty() && (places == 0 || before.size() + 1 < places);
    }

    private Stream<FormField> missing() {
        return sum.fields(filled).stream()
                .filter(ask -> ask.needed() && !ask.isChoice() && !filled.isFinished(ask.id()));
    }

    private FormField following() {
        List<FormField> asks = sum.fields(filled);
        int at = asks.indexOf(inHand);
        List<FormField> missing = missing().filter(ask -> !ask.equals(inHand)).toList();
        return missing.stream()
                .filter(ask -> asks.indexOf(ask) > at)
                .findFirst()
                .or(() -> missing.stream().findFirst())
                .orElse(asks.get((at + 1) % asks.size()));
    }

    /** Puts what is filled in for the field in hand on the pad. */
    private void load() {
        before.clear();
        fresh = true;
        List<Figure> figures = inHand.isChoice() ? List.of() : filled.figures(inHand.id());
        before.addAll(figures.subList(0, Math.max(0, figures.size() - 1)));
        put(figures.isEmpty() ? new Figure("", filled.unit()) : figures.get(figures.size() - 1));
        show();
    }

    private void put(Figure figure) {
        onPad = figure.unit();
        loading = true;
        pad.clear();
        figure.text().chars().mapToObj(Character::toString).forEach(pad::character);
        loading = false;
    }

    private void typed() {
        if (!loading) {
            fill(filled.with(
                    inHand.id(),
                    Stream.concat(before.stream(), Stream.of(onPad()))
                            .filter(one -> !one.text().isEmpty())
                            .toList()));
        }
    }

    private void fill(FormValues now) {
        filled = sum.settled(sum.follow(now, inHand.id()));
        changed();
    }

    private void changed() {
        noteKept = "";
        inHand = sum.fields(filled).stream()
                .filter(ask -> ask.id().equals(inHand.id()))
                .findFirst()
                .orElse(inHand);
        show();
    }

    private void show() {
        FormOutcome outcome = bench.work(sum, filled);
        KeyShown next = takesAnother()
                ? new KeyShown(words.say("bench.next"), words.say("bench.next.figure"), true)
                : new KeyShown(words.say("bench.next"), bench.name(following()), true);
        shown.set(showing.of(filled, outcome, inHand, onPad(), allDecimals, next, noteKey(outcome)));
    }

    private KeyShown noteKey(FormOutcome outcome) {
        String word = words.say("bench.note-key");
        if (book.isEmpty()) {
            return new KeyShown(word, words.say("bench.note.no-run"), false);
        }
        if (!(outcome instanceof FormOutcome.Done)) {
            return new KeyShown(word, words.say("bench.note.no-answer"), false);
        }
        return noteKept.isEmpty()
                ? new KeyShown(word, words.say("bench.note.with"), true)
                : new KeyShown(word, noteKept, false);
    }
}
