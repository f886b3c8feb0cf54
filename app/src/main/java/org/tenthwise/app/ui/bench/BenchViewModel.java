package org.tenthwise.app.ui.bench;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.bench.Bench;
import org.tenthwise.app.bench.BenchGroup;
import org.tenthwise.app.bench.BenchKind;
import org.tenthwise.app.bench.FormValues;
import org.tenthwise.app.bench.Prefill;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** The bench: which sum is in hand, or the list of them. A sum left keeps its figures as long as the bench is open. */
public final class BenchViewModel implements Typing {

    /** A sum to choose. {@code line} says what it is for, or that the step's figures are filled in. */
    public record Tile(BenchKind kind, String name, String line, boolean fitting) {}

    /** A group of sums to choose. */
    public record Group(BenchGroup group, String name, boolean chosen) {}

    private final Bench bench;
    private final Optional<State> run;
    private final Prefill prefill;
    private final Words words;
    private final Navigator navigator;
    private final Optional<SumViewModel.NoteBook> book;
    private final Map<BenchKind, SumViewModel> begun = new EnumMap<>(BenchKind.class);
    private final ReadOnlyObjectWrapper<Optional<SumViewModel>> inHand = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<BenchGroup> group;
    private boolean fromList;

    private BenchViewModel(
            Bench bench, Optional<State> run, Words words, Navigator navigator, Optional<SumViewModel.NoteBook> book) {
        this.bench = bench;
        this.run = run;
        this.prefill = run.map(Prefill::of).orElseGet(Prefill::nothing);
        this.words = words;
        this.navigator = navigator;
        this.book = book;
        this.group = new ReadOnlyObjectWrapper<>(firstFilled().group());
        this.prefill.fitting().ifPresent(kind -> inHand.set(Optional.of(sum(kind))));
    }

    /** Without a run. */
    public static BenchViewModel alone(Bench bench, Words words, Navigator navigator) {
        return new BenchViewModel(bench, Optional.empty(), words, navigator, Optional.empty());
    }

    /**
     * Beside a run: at once the sum that belongs to the step in hand, where one does.
     *
     * @param state of {@code session} now
     */
    public static BenchViewModel beside(
            RunSession session, State state, Bench bench, Words words, Navigator navigator, LedgerTasks tasks) {
        return new BenchViewModel(
                bench,
                Optional.of(state),
                words,
                navigator,
                Optional.of((text, kept, either) -> tasks.ask(
                        () -> session.note(text),
                        now -> kept.accept(words.say("bench.noted", now.inHand().number())),
                        either)));
    }

    /** The run as it was when the bench was opened; absent without one. */
    public Optional<State> run() {
        return run;
    }

    /** The sum the step in hand leads to, or else the first that is filled in, or else the first of all. */
    private BenchKind firstFilled() {
        return prefill.fitting()
                .or(() -> Stream.of(BenchKind.values())
                        .filter(prefill.filled()::containsKey)
                        .findFirst())
                .orElse(BenchKind.values()[0]);
    }

    /** Those that have sums, in their order. */
    public List<Group> groups() {
        return Stream.of(BenchKind.values())
                .map(BenchKind::group)
                .distinct()
                .map(one -> new Group(one, words.say("bench.group", one), one == group.get()))
                .toList();
    }

    /** The group whose sums are listed. */
    public ReadOnlyObjectProperty<BenchGroup> groupProperty() {
        return group.getReadOnlyProperty();
    }

    /** Lists the sums of {@code wanted}. */
    public void open(BenchGroup wanted) {
        group.set(wanted);
    }

    /** The sums of the group in hand. */
    public List<Tile> tiles() {
        return Bench.all().stream()
                .filter(sum -> sum.kind().group() == group.get())
                .map(sum -> new Tile(
                        sum.kind(),
                        words.say("bench.name", sum.kind()),
                        prefill.filled().containsKey(sum.kind())
                                ? words.say("bench.filled")
                                : words.say("bench.line", sum.kind()),
                        prefill.filled().containsKey(sum.kind())))
                .toList();
    }

    /** Absent while the lists are shown. */
    public ReadOnlyObjectProperty<Optional<SumViewModel>> inHandProperty() {
        return inHand.getReadOnlyProperty();
    }

    public void choose(BenchKind kind) {
        fromList = true;
        group.set(kind.group());
        inHand.set(Optional.of(sum(kind)));
    }

    public void list() {
        fromList = false;
        inHand.set(Optional.empty());
    }

    /** What the sums make of the published cases. */
    public void published() {
        navigator.reference();
    }

    /** From a sum chosen on the list back to the list, otherwise back to where the bench was opened from. */
    public void back() {
        if (fromList && inHand.get().isPresent()) {
            list();
        } else {
            navigator.back();
        }
    }

    private SumViewModel sum(BenchKind kind) {
        return begun.computeIfAbsent(
                kind,
                wanted -> new SumViewModel(
                        wanted.form(),
                        prefill.filled().getOrDefault(wanted, FormValues.nothing(prefill.unit())),
                        bench,
                        words,
                        book));
    }

    @Override
    public void character(String character) {
        inHand.get().ifPresent(sum -> sum.character(character));
    }

    @Override
    public void takeBack() {
        inHand.get().ifPresent(SumViewModel::takeBack);
    }

    @Override
    public void enter() {
        inHand.get().ifPresent(SumViewModel::enter);
    }
}
