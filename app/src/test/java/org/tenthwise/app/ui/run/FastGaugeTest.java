package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.app.ui.Display;
import org.tenthwise.app.ui.ScreenTest;
import org.tenthwise.app.ui.Watch;
import org.tenthwise.app.ui.Ways;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.StepEvent;

/** A gauge that types faster than the ledger writes, into checks of twenty places; time is moved by hand. */
class FastGaugeTest extends ScreenTest {

    private static final int A_CHARACTER_MS = 5;
    private static final int PLACES = 20;
    /** Five more than a check has places, without a pause; then what is told is answered. */
    private static final int BURST = 25;

    private static final int A_REST = 2000;
    private static final int ANSWERED_AFTER_MS = 2500;
    /** Every figure is another, all of five places and inside the limits. */
    private static final Pattern FIGURE = Pattern.compile("(?<![\\d.])47\\.9\\d{4}(?![\\d.])");

    @TempDir
    private Path dir;

    private final Watch watch = new Watch();
    private final Queue<Runnable> work = new ArrayDeque<>();
    private final List<String> told = new ArrayList<>();
    private long nowMs;
    private long busyUntilMs;
    private long toldAtMs = -1;

    @Test
    void aThousandFiguresAreEachAnEntryInItsOrderOrSaidNotToBeTaken() throws Exception {
        int taken = 0;
        for (int run = 0; run < 8; run++) {
            taken += send(run * 125, 125, 30).size();
            told.clear();
        }
        assertEquals(800, taken);
    }

    @Test
    void twentyFiguresOfOneCheckAreTwentyEntriesThoughEachTakesThreeHundredMilliseconds() throws Exception {
        assertEquals(PLACES, send(0, PLACES, 300).size());
        assertEquals(List.of(), told);
    }

    /** @return the figures that became entries, in order */
    private List<String> send(int first, int figures, int entryMs) throws Exception {
        List<String> sent = IntStream.range(first, first + figures)
                .mapToObj("47.9%04d"::formatted)
                .toList();
        try (Ledger ledger = new SqliteStores().open(dir.resolve(first + ".db"))) {
            RunSession session = new Runs(ledger, watch)
                    .begin(new RunHeader(plan((figures + PLACES - 1) / PLACES), "1", "L", "", "Setter 2"));
            watch.hold();
            run(() -> {
                Window window = window(Display.DAY);
                RunViewModel model = model(window, session);
                window.shell().show(new Bare(model));
                for (String figure : sent) {
                    for (char key : (figure + "\n").toCharArray()) {
                        type(window.scene(), Character.toString(key));
                        pass(window, entryMs);
                    }
                    if ((sent.indexOf(figure) + 1) % BURST == 0 || figure.equals(sent.get(figures - 1))) {
                        IntStream.range(0, A_REST).forEach(i -> pass(window, entryMs));
                    }
                }
            });
            List<String> taken = ledger.entries(session.id()).stream()
                    .flatMap(entry -> entry.event() instanceof StepEvent.ReadingTaken read
                            ? Stream.of(read.typed().text())
                            : Stream.empty())
                    .toList();
            List<String> named = told.stream()
                    .flatMap(words -> FIGURE.matcher(words).results().map(found -> found.group()))
                    .toList();
            assertEquals(taken.stream().sorted().toList(), taken, "in their order");
            List<String> all = new ArrayList<>(taken);
            all.addAll(named);
            assertEquals(sent, all.stream().sorted().toList());
            return taken;
        }
    }

    private void pass(Window window, int entryMs) {
        nowMs += A_CHARACTER_MS;
        watch.pass(A_CHARACTER_MS);
        if (!work.isEmpty() && nowMs >= busyUntilMs) {
            work.remove().run();
            busyUntilMs = nowMs + entryMs;
        }
        Node sheet = window.scene().getRoot().lookup("#message");
        if (sheet == null) {
            toldAtMs = -1;
        } else if (toldAtMs < 0) {
            toldAtMs = nowMs;
            sheet.lookupAll(".label").stream()
                    .map(label -> ((Label) label).getText())
                    .filter(text -> FIGURE.matcher(text).find())
                    .forEach(told::add);
        } else if (nowMs - toldAtMs >= ANSWERED_AFTER_MS) {
            toldAtMs = -1;
            List<Button> keys =
                    sheet.lookupAll(".key").stream().map(Button.class::cast).toList();
            keys.get(keys.size() - 1).fire();
            window.scene().getRoot().requestFocus();
        }
    }

    private RunViewModel model(Window window, RunSession session) {
        Ways ways = new Ways();
        ways.passedOn = window.shell()::tell;
        LedgerTasks tasks = new LedgerTasks(new Background(work::add, Runnable::run), words, ways);
        return new RunViewModel(session, session.state(), tasks, ways, words, watch);
    }

    private static Plan plan(int checks) {
        String places = IntStream.rangeClosed(1, PLACES)
                .mapToObj(i -> "\"place " + i + "\"")
                .collect(Collectors.joining(", "));
        String steps = IntStream.rangeClosed(1, checks)
                .mapToObj(number ->
                        """

                [[step]]
                number = %d
                operation = 10
                kind = "diameter"
                name = "Outside %d"
                method = "Micrometer."
                lower = 47.8
                upper = 48.2
                places = [%s]
                gauge_kind = "micrometer"
                gauge = "MC-3"
                """
                                .formatted(number, number, places))
                .collect(Collectors.joining());
        return InventedPlans.inMillimetres(steps);
    }

    /** A screen with nothing on it but what is typed. */
    private static final class Bare extends Screen {

        private final RunViewModel model;

        Bare(RunViewModel model) {
            super("run");
            this.model = model;
        }

        @Override
        public void arrange(Arrangement arrangement) {
            // nothing lies here
        }

        @Override
        public Typing typing() {
            return model;
        }
    }
}
