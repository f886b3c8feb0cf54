package org.tenthwise.app.ui.home;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunQuery;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.history.RunSummary;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.ui.keys.TextEntryViewModel;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/**
 * Open runs, those of the machine last worked on first, closed ones, or those put away; all of them, or those in which
 * the words typed are found. A page is looked up when it comes to be seen.
 */
public final class RunListViewModel {

    /** As many as a tablet shows; a larger display asks for those behind. */
    private static final int PAGE = 6;

    private static final int MOST = 40;
    /** What a gauge may have typed. */
    private static final Pattern FIGURE = Pattern.compile("[+\u2212-]?\\d*[.,]?\\d+");

    private final Runs shop;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final Clock clock;
    private final TextEntryViewModel typed = new TextEntryViewModel("", MOST, any -> goOnWithTheScanned());
    private final ReadOnlyObjectWrapper<RunShelf> shelf;
    private final ReadOnlyObjectWrapper<List<RunRow>> rows = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<LoadingState> looked = new ReadOnlyObjectWrapper<>(LoadingState.NOT_YET);
    private final ReadOnlyObjectWrapper<Optional<RunFacts>> last = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<String> machine = Optional.empty();
    private boolean any;
    private boolean whole;
    private boolean looking;
    private boolean opening;

    /** The words the rows are found by; absent before the store was read. */
    private Optional<String> rowsFor = Optional.empty();
    /** Whether Enter was typed before the store said what the words find. */
    private boolean entered;

    /** Words end with Enter; what is typed behind it are other words. */
    private final Typing typing = new Typing() {
        private boolean ended;

        @Override
        public void character(String character) {
            if (ended) {
                find("");
            }
            ended = false;
            typed.character(character);
        }

        @Override
        public void takeBack() {
            ended = false;
            typed.takeBack();
        }

        @Override
        public void enter() {
            ended = true;
            typed.enter();
        }
    };

    /** The next rows, and the signs of the stations among theirs that are not known. */
    private record Page(List<RunSummary> runs, Set<String> unknown) {}

    private record Loaded(Optional<String> machine, Optional<RunFacts> last, Page page) {}

    /** @param shelf where the runs lie that are listed first */
    public RunListViewModel(
            RunShelf shelf, Runs shop, LedgerTasks tasks, Words words, Navigator navigator, Clock clock) {
        this.shelf = new ReadOnlyObjectWrapper<>(shelf);
        this.shop = shop;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        this.clock = clock;
        typed.typedProperty().subscribe((before, now) -> {
            entered = false;
            load();
        });
    }

    /** Where the runs lie that are listed. */
    public ReadOnlyObjectProperty<RunShelf> shelfProperty() {
        return shelf.getReadOnlyProperty();
    }

    /** Lists the runs that lie elsewhere. */
    public void list(RunShelf other) {
        shelf.set(other);
        rowsFor = Optional.empty();
        load();
    }

    /** Those looked up so far. */
    public ReadOnlyObjectProperty<List<RunRow>> rowsProperty() {
        return rows.getReadOnlyProperty();
    }

    /**
     * Whether other rows only follow those there were, so that each of these stays where a finger is coming down on it.
     */
    static boolean isMoreOf(List<RunRow> before, List<RunRow> now) {
        return ids(now).subList(0, Math.min(before.size(), now.size())).equals(ids(before));
    }

    private static List<String> ids(List<RunRow> rows) {
        return rows.stream().map(row -> row.summary().id()).toList();
    }

    /** Whether the rows are those of the store: nothing is said about runs before it was read. */
    public ReadOnlyObjectProperty<LoadingState> lookedProperty() {
        return looked.getReadOnlyProperty();
    }

    /** The run last worked on, open or closed; absent before the store was read, and in a new one. */
    public ReadOnlyObjectProperty<Optional<RunFacts>> lastProperty() {
        return last.getReadOnlyProperty();
    }

    /** Whether the store was read and has no run at all. */
    public boolean isNew() {
        return looked.get() == LoadingState.DONE && !any;
    }

    /** Whether there is one run alone, and it is open: it has all the room. */
    public boolean isAlone(RunRow row) {
        return whole && rows.get().size() == 1 && row.open();
    }

    /** What runs are found by; empty where all are listed. */
    public ReadOnlyStringProperty foundByProperty() {
        return typed.typedProperty();
    }

    /** What is said where there is no row. */
    public String none() {
        if (looked.get() == LoadingState.DONE && !foundByProperty().get().isBlank()) {
            String by = foundByProperty().get().strip();
            return words.say(FIGURE.matcher(by).matches() ? "home.no-runs.figure" : "home.no-runs.found", by);
        }
        if (looked.get() == LoadingState.DONE && (any || shelf.get() != RunShelf.OPEN)) {
            return words.say("home.none", shelf.get());
        }
        return words.say("home.no-runs", looked.get());
    }

    /** Names the machine of the rows that come first, and then that the others follow; empty for every other row. */
    public String above(RunRow row) {
        if (machine.isEmpty() || rows.get().stream().allMatch(this::isOfMachine)) {
            return "";
        }
        boolean first = rows.get().stream()
                .filter(other -> isOfMachine(other) == isOfMachine(row))
                .findFirst()
                .filter(row::equals)
                .isPresent();
        if (!first) {
            return "";
        }
        return isOfMachine(row) ? words.say("home.on-machine", machine.get()) : words.say("home.on-others");
    }

    private boolean isOfMachine(RunRow row) {
        return machine.filter(row.summary().run().machine()::equals).isPresent();
    }

    /** A scanner or a keyboard types what runs are found by; Enter goes on with the one run whose serial it is. */
    public Typing typing() {
        return typing;
    }

    /** Asks for words to find runs by. */
    public void ask() {
        navigator.find(this::find);
    }

    /** @param by empty for all runs */
    public void find(String by) {
        typed.startAnew(by);
    }

    /** Looks the first page up; what was seen before stays until then. */
    public void load() {
        String by = foundByProperty().get();
        RunShelf lying = shelf.get();
        tasks.runOr(
                () -> firstPage(lying, by),
                loaded -> {
                    if (by.equals(foundByProperty().get()) && lying == shelf.get()) {
                        machine = loaded.machine();
                        any = loaded.last().isPresent();
                        last.set(loaded.last());
                        rowsFor = Optional.of(by);
                        show(List.of(), loaded.page());
                        if (entered) {
                            goOnWithTheScanned();
                        }
                    }
                },
                () -> {
                    entered = false;
                    if (looked.get() != LoadingState.DONE) {
                        looked.set(LoadingState.FAILED);
                    }
                });
    }

    /** The last row that was looked up is seen: looks up those behind it. */
    public void more() {
        List<RunRow> before = rows.get();
        if (whole || looking || before.isEmpty()) {
            return;
        }
        looking = true;
        String by = foundByProperty().get();
        RunShelf lying = shelf.get();
        Optional<String> first = machine;
        RunFacts lowest = before.get(before.size() - 1).summary().run();
        tasks.run(
                () -> page(new RunQuery(lying, first, by, Optional.of(lowest), PAGE)),
                page -> {
                    if (rows.get() == before) {
                        show(before, page);
                    }
                },
                () -> looking = false);
    }

    private Loaded firstPage(RunShelf lying, String by) {
        History history = shop.history();
        Optional<RunFacts> latest = history.last();
        Optional<String> here = latest.map(RunFacts::machine).filter(name -> lying == RunShelf.OPEN && !name.isBlank());
        return new Loaded(here, latest, page(new RunQuery(lying, here, by, Optional.empty(), PAGE)));
    }

    private Page page(RunQuery query) {
        return new Page(shop.list(query), shop.unknownStations());
    }

    private void show(List<RunRow> before, Page page) {
        When when = new When(OffsetDateTime.now(clock), words);
        whole = page.runs().size() < PAGE;
        looked.set(LoadingState.DONE);
        rows.set(Stream.concat(
                        before.stream(), page.runs().stream().map(run -> RunRow.of(run, page.unknown(), when, words)))
                .toList());
    }

    /**
     * Rows that were there before the words were typed are none they find; a serial that only holds them is another.
     */
    private void goOnWithTheScanned() {
        String by = foundByProperty().get();
        entered = !rowsFor.equals(Optional.of(by));
        if (entered || !whole) {
            return;
        }
        List<RunRow> scanned = rows.get().stream()
                .filter(row -> isSerialIn(by.strip(), row.summary().run()))
                .toList();
        if (scanned.size() == 1) {
            goOn(scanned.get(0));
        }
    }

    /** Whether a text is the serial of a run, or names it by nothing but serial, part number and lot. */
    private static boolean isSerialIn(String text, RunFacts run) {
        List<String> scanned = List.of(text.split("\\s+"));
        return run.serial().equalsIgnoreCase(text)
                || scanned.stream().anyMatch(run.serial()::equalsIgnoreCase)
                        && scanned.stream().allMatch(word -> Stream.of(run.serial(), run.part(), run.lot())
                                .anyMatch(word::equalsIgnoreCase));
    }

    /** Goes on with a run; one closed or put away is looked at. */
    public void goOn(RunRow row) {
        if (!row.open()) {
            navigator.record(row.summary().id());
        } else if (!opening) {
            opening = true;
            tasks.run(() -> shop.open(row.summary().id()), navigator::run, () -> opening = false);
        }
    }
}
