package org.tenthwise.app.ui.run;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.picture.Lettering;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.ui.Display;
import org.tenthwise.app.ui.ScreenTest;
import org.tenthwise.app.ui.picture.ScreenFaces;
import org.tenthwise.app.ui.shell.Errands;
import org.tenthwise.app.ui.theme.Pictures;

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

    final RunScreen screen(Window window) {
        Pictures pictures = new Pictures(new ScreenFaces(), new Lettering(), window.look());
        Errands errands = new Errands(new Background(Runnable::run, Runnable::run), words, ways);
        RunViewModel model = new RunViewModel(run.session, run.session.state(), errands, ways, words, clock);
        return new RunScreen(model, pictures, words);
    }

    final Window opened() {
        Window window = window(Display.DAY);
        window.shell().show(screen(window));
        settle(window.scene());
        return window;
    }
}
