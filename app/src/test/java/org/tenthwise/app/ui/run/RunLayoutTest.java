package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.ui.Display;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Disposition;

/**
 * The run screen keeps its order in every state on every display: a class of fault at a time, see {@link SheetLooks}.
 */
class RunLayoutTest extends RunAtHand {

    /** How high the picture is at least: at 1280 × 800, and on any display. */
    private record Floor(double reference, double anywhere) {}

    private static final Floor NONE = new Floor(0, 0);
    private static final Floor OF_A_BORE = new Floor(330, 180);

    private final List<String> faults = new ArrayList<>();

    @Test
    void aBoreKeepsItsPictureLargeFromTheFirstReadingToTheLast() throws Exception {
        run.setUpAndGoTo(ARun.BORE);
        look("sense", NONE);
        run.setBoreGauge();
        look("unread", new Floor(300, 150));
        run.enter("0.015", "0.014");
        look("half read", OF_A_BORE);
        run.enter("0.011", "0.013");
        look("passed", OF_A_BORE);
        run.session.strikeOut(
                run.session.state().pass().readings().get(0).entry().seq(), "Misread");
        run.enter("0.0245");
        look("past size", new Floor(300, 170));
        run.session.dispose(Disposition.USE_AS_IS, "Key fitted by hand", "Inspector 1", "C-1");
        run.session.strikeOut(
                run.session.state().pass().readings().get(3).entry().seq(), "Misread");
        run.enter("0.0265");
        look("lapsed", new Floor(290, 140));
        assertEquals(List.of(), faults);
    }

    @Test
    void aDiameterToBeCutKeepsItsAdviceWhole() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        look("unread", new Floor(300, 150));
        run.session.machine(Register.RADIUS, Aim.ByLimits.MIDDLE);
        run.enter("48.032", "48.030", "48.031", "48.032");
        look("cut again", new Floor(300, 150));
        run.session.again(org.tenthwise.model.run.StepEvent.PassBegun.Why.CUT);
        run.enter("48.052", "48.030", "47.991", "48.012");
        look("uneven", new Floor(240, 100));
        assertEquals(List.of(), faults);
    }

    /** What is asked takes two lines. */
    @Test
    void theFigureOfATurnTakenLastIsToBeSeen() throws Exception {
        run.session.answer(Answer.YES);
        run.session.goTo(ARun.RUN_OUT);
        run.enter("0.002");
        seen("run", "run-out-half-read", this::screen, window -> {
            settle(window.scene());
            if (!window.look().largeTextProperty().get()
                    && !shown(window.scene().lookup("#comes-to"))) {
                faults.add("last on " + window.scene().getWidth() + " × "
                        + window.scene().getHeight());
            }
        });
        assertEquals(List.of(), faults);
    }

    @Test
    void aRunOutKeepsItsMovesWhole() throws Exception {
        run.session.answer(Answer.YES);
        run.session.goTo(ARun.RUN_OUT);
        look("unread", new Floor(300, 150));
        run.session.turn().sweep(false);
        run.enter("0.000", "-0.011", "-0.028", "-0.038", "-0.038", "-0.026", "-0.011", "-0.001");
        run.enter("0.000", "-0.014", "-0.036", "-0.048", "-0.049", "-0.034", "-0.014", "-0.002");
        look("out", new Floor(290, 210));
        assertEquals(List.of(), faults);
    }

    @Test
    void aPlugAThreadAndAQuestionKeepTheirs() throws Exception {
        look("asked", NONE);
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.012", "0.012", "0.011", "0.011");
        Workshop.toTheThread(run.session);
        run.enter("3.620", "40.749", "40.755", "40.752");
        look("thread", new Floor(300, 180));
        run.session.goTo(22);
        run.enter("3.975", "3.978", "3.976", "3.979", "3.975");
        look("depth", new Floor(300, 180));
        run.session.goTo(ARun.PLUG);
        look("plug", NONE);
        assertEquals(List.of(), faults);
    }

    /** Hand against gauge: nothing of it may wait behind a key. */
    @Test
    void aContradictionStaysInSight() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.012", "0.012", "0.011", "0.011");
        run.session.goTo(ARun.PLUG);
        run.enter("30.020", "30.020");
        run.session.answer(Answer.FREELY);
        look("contradiction", new Floor(280, 130));
        run.session.flagDoubt("Ring not wiped?");
        look("doubted", new Floor(270, 110));
        assertEquals(List.of(), faults);
    }

    /** Whatever is said of a step, none of it is cut: the picture gives way. */
    @Test
    void aLongDoubtIsWhole() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.015", "0.014", "0.011", "0.0245");
        run.session.flagDoubt("The ring was still warm from the hand when the gauge was set, and the bore was read "
                + "right after the last cut; set and read both again tomorrow morning before anything is cut.");
        look("doubted at length", NONE);
        seen("run", "doubted-at-length", this::screen);
        assertEquals(List.of(), faults);
    }

    /** Nine of the list are in sight at the reference size, hold points between them or not. */
    @Test
    void nineStepsAreInSightWhereverTheListIs() throws Exception {
        for (int step : List.of(1, 5, 13, 16, 18, 26, 35)) {
            run.session.goTo(step);
            run(() -> {
                Window window = window(Display.DAY);
                window.shell().show(screen(window));
                settle(window.scene());
                assertEquals(9, new SheetLooks(window.scene()).rows(), "at " + step);
            });
        }
    }

    private void look(String state, Floor floor) {
        for (Display display : displays()) {
            run(() -> {
                Window window = window(display);
                RunScreen screen = screen(window);
                window.shell().show(screen);
                settle(window.scene());
                RunScreenState shown = atOnce().shownProperty().get();
                SheetLooks looks = new SheetLooks(window.scene());
                List<String> here = new ArrayList<>(looks.faults());
                if (!shown.inHand().caution().isEmpty()) {
                    here.addAll(looks.faultsOfCaution(shown.inHand().caution()));
                }
                here.addAll(looks.faultsOf(shown.found()));
                double least = display.equals(Display.DAY) ? floor.reference() : floor.anywhere();
                if (looks.pictureHeight() < least) {
                    here.add("the picture is %.0f high, not %.0f".formatted(looks.pictureHeight(), least));
                }
                here.stream()
                        .distinct()
                        .forEach(fault -> faults.add("\n" + state + ", " + display.name() + ": " + fault));
            });
        }
    }
}
