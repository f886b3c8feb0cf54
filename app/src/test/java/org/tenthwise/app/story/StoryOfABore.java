package org.tenthwise.app.story;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.app.ui.Watch;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Words;

/**
 * A lot to be confirmed, a bore to be read two ways, a finish to be looked at; and what is told of the step in hand.
 */
abstract class StoryOfABore {

    static final Words WORDS = Words.of(Locale.ENGLISH);
    static final String TEXT = InventedPlans.text(
            "mm",
            """
            [[step]]
            number = 1
            operation = 10
            kind = "confirm"
            name = "Lot"
            what = "The lot is that on the card."
            hold = [1]

            [[step]]
            number = 2
            operation = 10
            kind = "bore"
            name = "Bore"
            method = "Two ways."
            lower = 20.000
            upper = 20.021
            places = ["0°", "90°"]
            cut_again = "too small"
            gauge_kind = "bore-gauge"
            gauge = "BG-1"
            master = 20.000
            hold = [2]

            [[step]]
            number = 3
            operation = 10
            kind = "look"
            name = "Finish"
            what = "No chatter."
            """);
    static final Plan PLAN = InventedPlans.read(TEXT);
    static final int LOT = 1;
    static final int BORE = 2;

    @TempDir
    private Path folder;

    private final Watch watch = Watch.held();
    private Ledger ledger;
    RunSession session;
    /** Whether the shop knows which way the number of the bore gauge goes. */
    private boolean senseKnown;

    @BeforeEach
    void begin() throws Exception {
        ledger = new SqliteStores().open(folder.resolve("s.db"));
        session = begun(PLAN, "014", "Setter 1");
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    final RunSession begun(Plan plan, String serial, String by) throws Exception {
        return begun(plan, serial, "Lathe 4", by);
    }

    final RunSession begun(Plan plan, String serial, String machine, String by) throws Exception {
        return new Runs(ledger, watch).begin(new RunHeader(plan, serial, "", machine, by));
    }

    final void later(int minutes) {
        watch.pass(Duration.ofMinutes(minutes).toMillis());
    }

    static void lot(RunSession run) throws Exception {
        run.goTo(LOT);
        assertEquals(Optional.empty(), run.answer(Answer.YES).objection());
    }

    /** The bore in hand and its gauge set on 20.000, where it reads nothing. */
    final void setGauge(RunSession run) throws Exception {
        lot(run);
        run.goTo(BORE);
        if (!senseKnown) {
            run.gauge().tellSense(false);
        }
        enter(run, "20.000", "0");
        if (!senseKnown) {
            run.gauge().confirmSense(true);
        }
        senseKnown = true;
    }

    final void enter(RunSession run, String... figures) throws Exception {
        for (String figure : figures) {
            later(1);
            assertEquals(Optional.empty(), run.enter(figure).objection(), figure);
        }
    }

    private List<StoryChapter> chapters() {
        return StepStory.of(session.state(), WORDS).chapters();
    }

    final List<String> told(String heading) {
        return chapters().stream()
                .filter(chapter -> chapter.heading().equals(heading))
                .flatMap(chapter -> chapter.lines().stream())
                .map(line ->
                        line.words() + " | " + line.when() + " | " + line.person() + (line.counts() ? "" : " | gone"))
                .toList();
    }

    final List<String> headings() {
        return chapters().stream().map(StoryChapter::heading).toList();
    }
}
