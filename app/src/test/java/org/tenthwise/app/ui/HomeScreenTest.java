package org.tenthwise.app.ui;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.picture.TextMetrics;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.home.HomeView;
import org.tenthwise.app.ui.home.HomeViewModel;
import org.tenthwise.app.ui.picture.ScreenFaces;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.PlanProblem;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.run.SignedAs;

/** The home screen in its states, on every display. */
class HomeScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private Screen home(Window window, Catalogue catalogue) {
        HomeViewModel model =
                new HomeViewModel(workshop.shop, () -> catalogue, workshop.errands, words, workshop, Workshop.CLOCK);
        return new HomeView(model, words, new PictureFrames(new ScreenFaces(), new TextMetrics(), window.look()));
    }

    @Test
    void runsAndPartsHoldEverywhere() {
        RunSession winch = workshop.begin(DemoPart.WINCH_BARREL_END, "003");
        Workshop.must(() -> winch.answer(Answer.YES));
        RunSession closed = workshop.setUp("012");
        Workshop.must(() -> closed.close("Inspector 1", SignedAs.NOT_ACCEPTED));
        workshop.atTheBore("013", "0.013", "0.015", "0.014", "0.027");
        workshop.atTheBore("014-second-half-of-the-pair", "-0.013");
        seen("home", "runs", window -> home(window, Catalogue.ofDemoParts()));
    }

    /** The store is slow: nothing of it has come yet. */
    @Test
    void aStoreNotReadYetIsSaidEverywhere() {
        LedgerTasks never = new LedgerTasks(new Background(work -> {}, Runnable::run), words, workshop);
        seen(
                "home",
                "reading",
                window -> new HomeView(
                        new HomeViewModel(
                                workshop.shop, Catalogue::ofDemoParts, never, words, workshop, Workshop.CLOCK),
                        words,
                        new PictureFrames(new ScreenFaces(), new TextMetrics(), window.look())));
    }

    @Test
    void aNewShopHoldsEverywhere() {
        seen("home", "new", window -> home(window, Catalogue.ofDemoParts()));
    }

    @Test
    void anUnsoundPlanIsSaidEverywhere() {
        Catalogue unsound = new Catalogue(
                List.of(),
                List.of(new Catalogue.Refused(
                        "KX-9.toml",
                        List.of(new PlanProblem(
                                7, 3, "check 7: upper limit 30.000 mm is below lower limit 30.021 mm")))));
        seen("home", "unsound", window -> home(window, unsound));
    }
}
