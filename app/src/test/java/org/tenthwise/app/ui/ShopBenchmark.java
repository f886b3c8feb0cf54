package org.tenthwise.app.ui;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.history.LastPartQuery;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.session.State;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.app.ui.deed.StrikeForm;
import org.tenthwise.app.ui.deed.WordsForm;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.home.RunListViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/**
 * What a shop with many runs costs beside one with ten: home, records, what is found, a note, a doubt, a strike-out, a
 * reading, the part before, and what the list of home holds in memory. Runs of some hundred entries, half of them
 * closed, on five machines; the two shops take turns.
 *
 * <p>After {@code mvn -q package -DskipTests}, from the top of the repository, with a folder on the disk to be tried:
 *
 * <pre>
 * java -cp app/target/tenthwise.jar:app/target/test-classes org.tenthwise.app.ui.ShopBenchmark FOLDER 10000
 * </pre>
 */
final class ShopBenchmark {

    private static final int FEW = 10;
    private static final int STEPS = 12;
    private static final int PLACES = 8;
    private static final int AT_ONCE = 50;
    private static final int TURNS = 300;
    private static final int WARMING_UP = 100;
    private static final Clock CLOCK = Clock.systemDefaultZone();

    private final Runs runs;
    private final Words words = Words.of(Locale.ENGLISH);
    private final Ways ways = new Ways();
    private final LedgerTasks tasks = new LedgerTasks(new Background(Runnable::run, Runnable::run), words, ways);
    private final RunSession session;
    private final RunListViewModel home;
    private final Map<String, List<Long>> nanoseconds = new LinkedHashMap<>();

    private ShopBenchmark(Ledger ledger) throws Exception {
        this.runs = new Runs(ledger, CLOCK);
        this.session = runs.begin(new RunHeader(plan(), "in hand", "L-1", "Lathe 1", "Setter 1"));
        this.home = list(RunShelf.OPEN);
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory(Path.of(arguments[0]), "shop");
        int many = Integer.parseInt(arguments[1]);
        try (Ledger small = shop(folder.resolve("few.db"), FEW);
                Ledger large = shop(folder.resolve("many.db"), many)) {
            long before = heap();
            ShopBenchmark few = new ShopBenchmark(small);
            few.home.load();
            long ofFew = heap();
            ShopBenchmark beside = new ShopBenchmark(large);
            beside.home.load();
            long ofMany = heap();
            for (int turn = 0; turn < WARMING_UP + TURNS; turn++) {
                if (turn == WARMING_UP) {
                    few.nanoseconds.clear();
                    beside.nanoseconds.clear();
                }
                few.turn();
                beside.turn();
            }
            System.out.printf(
                    "%d entries beside %d%n", large.head().seq(), small.head().seq());
            few.nanoseconds.forEach((name, taken) -> {
                double of = median(beside.nanoseconds.get(name));
                System.out.printf(
                        "%-12s %8.3f ms with %d runs, %8.3f ms with %d, ratio %.2f%n",
                        name, median(taken), FEW, of, many, of / median(taken));
            });
            System.out.printf(
                    "memory of a list with its shop: %.2f MB with %d runs, %.2f MB with %d; all in use %.1f MB, "
                            + "then %.1f%n",
                    (ofFew - before) / 1e6, FEW, (ofMany - ofFew) / 1e6, many, ofFew / 1e6, ofMany / 1e6);
        }
    }

    private RunListViewModel list(RunShelf shelf) {
        return new RunListViewModel(shelf, runs, tasks, words, ways, CLOCK);
    }

    private void turn() throws Exception {
        timed("home", home::load);
        timed("records", () -> list(RunShelf.CLOSED).load());
        timed("note", () -> say(Navigator.Saying.NOTE));
        timed("doubt", () -> say(Navigator.Saying.DOUBT));
        timed("strike-out", () -> new StrikeForm(inHand(), words, ways, Clock.systemUTC()).load());
        if (session.state().figureBeginsNext()) {
            session.goOn();
        }
        timed("reading", () -> session.enter("35.001"));
        LastPartQuery query = query(session.state());
        timed("part before", () -> runs.history().lastPart(query));
        if (!session.state().figureBeginsNext() && session.state().next().isEmpty()) {
            session.goTo(1);
            session.again(StepEvent.PassBegun.Why.MEASURED_AGAIN);
        }
    }

    private static LastPartQuery query(State state) {
        return new LastPartQuery(state.sheet().plan().part(), "in hand", state.inHand(), Long.MAX_VALUE);
    }

    private void say(Navigator.Saying what) {
        new WordsForm(what, inHand(), words, ways).load();
    }

    private CurrentRun inHand() {
        return new CurrentRun(session, runs, tasks);
    }

    /** Something timed. */
    private interface Deed {
        void done() throws Exception;
    }

    private void timed(String name, Deed deed) throws Exception {
        long start = System.nanoTime();
        deed.done();
        nanoseconds.computeIfAbsent(name, first -> new ArrayList<>()).add(System.nanoTime() - start);
    }

    private static double median(List<Long> taken) {
        List<Long> sorted = new ArrayList<>(taken);
        Collections.sort(sorted);
        return sorted.get(sorted.size() / 2) / 1e6;
    }

    private static long heap() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static Plan plan() {
        String places = IntStream.rangeClosed(1, PLACES)
                .mapToObj("\"place %d\""::formatted)
                .collect(Collectors.joining(", "));
        return InventedPlans.inMillimetres(IntStream.rangeClosed(1, STEPS)
                .mapToObj(number ->
                        """
                        [[step]]
                        number = %d
                        operation = 10
                        kind = "diameter"
                        name = "Seat"
                        method = "Micrometer."
                        lower = 34.990
                        upper = 35.010
                        places = [%s]
                        gauge_kind = "micrometer"
                        gauge = "MC-1"

                        """
                                .formatted(number, places))
                .collect(Collectors.joining()));
    }

    /** A store with so many runs, each a copy of one that was worked, under another name and chained as any other. */
    private static Ledger shop(Path store, int count) throws Exception {
        Ledger ledger = new SqliteStores().open(store);
        List<Entry> worked = worked(ledger);
        for (int first = 0; first < count; first += AT_ONCE) {
            List<NewEntry> added = new ArrayList<>();
            for (int i = first; i < Math.min(count, first + AT_ONCE); i++) {
                copy(worked, i, added);
            }
            ledger.append(added);
        }
        return ledger;
    }

    private static List<Entry> worked(Ledger ledger) throws Exception {
        RunSession session = new Runs(ledger, CLOCK).begin(new RunHeader(plan(), "0", "L-1", "Lathe 1", "Setter 1"));
        do {
            for (int place = 0; place < PLACES; place++) {
                session.enter("35.001");
            }
            session.goOn();
        } while (session.state().inHand().number() < STEPS);
        return ledger.entries(session.id());
    }

    private static void copy(List<Entry> worked, int number, List<NewEntry> added) {
        String run = "copy-" + number;
        for (Entry entry : worked) {
            Event event = entry.event() instanceof Event.Begun begun
                    ? new Event.Begun(
                            begun.part(),
                            String.valueOf(number),
                            "L-" + number % 100,
                            "Lathe " + number % 5,
                            begun.plan(),
                            begun.noLot())
                    : entry.event();
            added.add(new NewEntry(run, entry.at(), "Setter " + number % 20, event));
        }
        if (number % 2 == 0) {
            added.add(new NewEntry(
                    run, OffsetDateTime.now(CLOCK), "Inspector 1", new Event.Closed("Inspector 1", SignedAs.ACCEPTED)));
        }
    }
}
