package org.tenthwise.app.ui;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.home.FindHints;
import org.tenthwise.app.ui.home.FindViewModel;
import org.tenthwise.app.ui.home.HomeView;
import org.tenthwise.app.ui.home.HomeViewModel;
import org.tenthwise.app.ui.home.MattersKeyModel;
import org.tenthwise.app.ui.home.RecordsView;
import org.tenthwise.app.ui.home.RunListViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.run.SignedAs;

/** The home screen in its states, on every display. */
class HomeScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private Screen home(Window window, Catalogue catalogue) {
        HomeViewModel model = new HomeViewModel(
                workshop.shop, () -> catalogue, true, workshop.tasks, words, workshop, Workshop.CLOCK);
        return new HomeView(model, words, window.pictures());
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

    @Test
    void runsOfOtherMachinesAndARunThatCannotBeReadHoldEverywhere() {
        workshop.begin(DemoPart.WINCH_BARREL_END.plan(), "003", "CD-1", "Boring mill with a long name 2", "Setter 1");
        workshop.beginUnreadable("7");
        workshop.atTheBore("013", "0.013", "0.015", "0.014", "0.027");
        seen("home", "machines", window -> home(window, Catalogue.ofDemoParts()));
    }

    @Test
    void whatIsFoundHoldsEverywhere() {
        workshop.atTheBore("013", "0.013", "0.015", "0.014", "0.027");
        workshop.begin(DemoPart.WINCH_BARREL_END, "003");
        seen("home", "found", window -> home(window, Catalogue.ofDemoParts()), window -> "LG-2207 setter 2"
                .codePoints()
                .mapToObj(Character::toString)
                .forEach(window.shell().inHand().orElseThrow().typing()::character));
        seen(
                "home",
                "found-none",
                window -> home(window, Catalogue.ofDemoParts()),
                window -> window.shell().inHand().orElseThrow().typing().character("nothing"));
    }

    @Test
    void closedRunsHoldEverywhere() {
        for (SignedAs meaning : List.of(SignedAs.NOT_ACCEPTED, SignedAs.MACHINED_AND_MEASURED)) {
            RunSession closed = workshop.setUp("012-" + meaning.word());
            Workshop.must(() -> closed.close("Inspector 1", meaning));
        }
        Workshop.must(() -> workshop.setUp("013").shelf().putAway("Setter 3", "Started twice"));
        workshop.beginUnreadable("7");
        seen("records", "closed", window -> records(window));
    }

    @Test
    void runsPutAwayHoldEverywhere() {
        Workshop.must(() -> workshop.setUp("013").shelf().putAway("Setter 3", "Started twice"));
        Workshop.must(() -> workshop.atTheBore("014", "0.013")
                .shelf()
                .putAway("Setter 2", FormsScreenTest.LONG_WORDS.substring(0, 118)));
        seen("records", "put-away", window -> records(window, RunShelf.PUT_AWAY));
    }

    @Test
    void aShopWithoutClosedRunsHoldsEverywhere() {
        seen("records", "none", window -> records(window));
    }

    private Screen records(Window window) {
        return records(window, RunShelf.CLOSED);
    }

    private Screen records(Window window, RunShelf shelf) {
        return new RecordsView(
                new RunListViewModel(shelf, workshop.shop, workshop.tasks, words, workshop, Workshop.CLOCK),
                new MattersKeyModel(workshop.matterBook(), workshop.tasks, words, workshop),
                words,
                window.pictures(),
                workshop);
    }

    @Test
    void theWordsToFindByAreTypedEverywhere() {
        workshop.begin(DemoPart.WINCH_BARREL_END, "003");
        seen("home", "find", window -> {
            FindViewModel model = new FindViewModel(workshop.shop, workshop.tasks, words, workshop, by -> {});
            return FormView.titled(words.say("find.title"), model.form(), words, workshop::back, model::load)
                    .about(new FindHints(words));
        });
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
                                workshop.shop, Catalogue::ofDemoParts, true, never, words, workshop, Workshop.CLOCK),
                        words,
                        window.pictures()));
    }

    @Test
    void theOneRunThereIsHasAllTheRoom() {
        workshop.atTheBore("014", "-0.013");
        seen("home", "alone", window -> home(window, Catalogue.ofDemoParts()));
    }

    @Test
    void aNewShopHoldsEverywhere() {
        seen("home", "new", window -> home(window, Catalogue.ofDemoParts()));
    }

    @Test
    void anUnsoundPlanIsSaidEverywhere() {
        seen("home", "unsound", window -> home(window, InventedPlans.unsound()));
    }
}
