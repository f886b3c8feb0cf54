package org.tenthwise.app.ui.run;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executor;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.ui.Display;
import org.tenthwise.app.ui.ScreenTest;
import org.tenthwise.app.ui.Watch;
import org.tenthwise.app.ui.Ways;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.model.plan.Plan;

/** A run screen on a run of the demo's screw carrier, for the tests of its looks and of its handling. */
abstract class RunAtHand extends ScreenTest {

    @TempDir
    private Path dir;

    ARun run;
    final Ways ways = new Ways();
    /** Time enough has passed whenever it is looked at, unless a test holds it. */
    final Watch clock = new Watch();

    @BeforeEach
    void beginARun() throws Exception {
        run = new ARun(dir.resolve("s.db"));
    }

    @AfterEach
    void letGo() {
        run.close();
    }

    /** A run of another plan instead of the one in hand, in a store of its own. */
    final void beginARunOf(Plan plan) throws Exception {
        run.close();
        run = new ARun(Files.createTempDirectory(dir, "of").resolve("s.db"), plan);
    }

    final RunScreen screen(Window window) {
        return new RunScreen(atOnce(), window.pictures(), words);
    }

    final Window opened() {
        Window window = window(Display.DAY);
        window.shell().show(screen(window));
        settle(window.scene());
        return window;
    }

    /** The screen's model, with every deed done at once. */
    final RunViewModel atOnce() {
        return model(Runnable::run);
    }

    /** @param work takes each deed, to do it when the test wants it done */
    final RunViewModel model(Executor work) {
        return new RunViewModel(
                run.session,
                run.session.state(),
                new LedgerTasks(new Background(work, Runnable::run), words, ways),
                ways,
                words,
                clock);
    }

    /** Types into a model without a screen; a line feed is Enter. */
    static void sends(RunViewModel model, String keys) {
        for (char key : keys.toCharArray()) {
            if (key == '\n') {
                model.enter();
            } else {
                model.character(Character.toString(key));
            }
        }
    }

    /** The readings of the pass in hand, as they were typed. */
    final List<String> readings() {
        return run.session.state().pass().readings().stream()
                .map(reading -> reading.typed().text())
                .toList();
    }

    static String text(Scene scene, String id) {
        settle(scene);
        return ((Label) scene.lookup("#" + id)).getText();
    }
}
