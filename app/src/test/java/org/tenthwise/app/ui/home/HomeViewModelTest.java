package org.tenthwise.app.ui.home;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.model.words.Words;

class HomeViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private HomeViewModel model(Callable<Catalogue> plans) {
        HomeViewModel model =
                new HomeViewModel(workshop.shop, plans, true, workshop.tasks, workshop.words, workshop, Workshop.CLOCK);
        model.load();
        return model;
    }

    @Test
    void aRunBegunSaysWhereItStandsAndIsGoneOnWith() {
        RunSession session = workshop.setUp("014");
        HomeViewModel model = model(Catalogue::ofDemoParts);
        RunRow row = model.runs().rowsProperty().get().get(0);
        assertEquals("At 6, Coolant and chips", row.where());
        model.runs().goOn(row);
        assertEquals(List.of("run " + session.id()), workshop.asked);
    }

    @Test
    void aBoreToCutAgainSaysHowFar() {
        // 30.000 − 0.013 = 29.987, under 30.000 by 0.013
        workshop.atTheBore("014", "-0.013");
        assertEquals(
                "At 13: cut again, 0.013 mm below the lower limit.",
                model(Catalogue::ofDemoParts).runs().rowsProperty().get().get(0).where());
    }

    @Test
    void beforeAStepThatWaitsForItsDispositionTheOpenCheckIsNamed() {
        workshop.atTheBore("014", "0.027");
        assertEquals(
                "Open: 6, Coolant and chips. 13 needs a disposition",
                model(Catalogue::ofDemoParts).runs().rowsProperty().get().get(0).where());
    }

    @Test
    void aRunIsSaidToStandWhereItGoesOn() {
        RunSession session = workshop.atTheBore("014", "0.027");
        session.goTo(6);
        RunRow row = model(Catalogue::ofDemoParts).runs().rowsProperty().get().get(0);
        assertEquals("At 6, Coolant and chips", row.where());
        assertEquals(6, workshop.shop.open(session.id()).state().inHand().number());
    }

    @Test
    void aFailedStepWithNothingOpenBeforeItWaitsForItsDisposition() {
        RunSession session = workshop.begin(InventedPlans.ROOT_THEN_WIRES, "014", "L-1", "Lathe 4", "Setter 2");
        Workshop.must(() -> session.keep("17.25"));
        assertEquals(
                "At 1, Root: needs a disposition",
                model(Catalogue::ofDemoParts).runs().rowsProperty().get().get(0).where());
    }

    @Test
    void whereNothingIsMissingButASignatureThatIsSaid() {
        RunSession session = workshop.begin(InventedPlans.ROOT, "014", "L-1", "Lathe 4", "Setter 2");
        Workshop.must(() -> session.enter("17.0"));
        assertEquals(
                "All checks done: to be signed",
                model(Catalogue::ofDemoParts).runs().rowsProperty().get().get(0).where());
    }

    @Test
    void theHeadingNamesTheMachineAndWhoWorkedLastAndHandsTheForemostRunOver() {
        HomeViewModel fresh = model(Catalogue::ofDemoParts);
        assertEquals("–", fresh.machineValue().getValue());
        assertEquals(false, fresh.handsOverValue().getValue());
        RunSession session = workshop.setUp("014");
        HomeViewModel model = model(Catalogue::ofDemoParts);
        assertEquals("Lathe 4", model.machineValue().getValue());
        assertEquals("Setter 2", model.byValue().getValue());
        assertEquals(true, model.handsOverValue().getValue());
        model.handOver();
        assertEquals(List.of("say HAND_OVER " + session.id()), workshop.asked);
    }

    @Test
    void aGaugeWhoseSenseWasStruckOutIsInDoubtUntilItIsToldAnew() {
        RunSession session = workshop.atTheBore("014", "-0.013");
        assertEquals(
                "none in doubt", model(Catalogue::ofDemoParts).gaugesProperty().get());
        Workshop.must(() -> session.gauge()
                .strikeOut(session.state().settingsHere().get(0), SettingFault.SENSE, "Read the wrong way"));
        assertEquals(
                "BG-2 in doubt", model(Catalogue::ofDemoParts).gaugesProperty().get());
    }

    @Test
    void aPartIsBegunOn() {
        HomeViewModel model = model(Catalogue::ofDemoParts);
        model.begin(model.partsProperty().get().get(1));
        assertEquals(List.of("begin WB-118"), workshop.asked);
    }

    @Test
    void nothingIsSaidAboutRunsAndPartsBeforeTheyWereLookedUp() {
        Deque<Runnable> toDo = new ArrayDeque<>();
        LedgerTasks slow = new LedgerTasks(new Background(toDo::add, Runnable::run), workshop.words, workshop);
        HomeViewModel model = new HomeViewModel(
                workshop.shop, Catalogue::ofDemoParts, false, slow, workshop.words, workshop, Workshop.CLOCK);
        model.load();
        assertEquals(
                List.of(LoadingState.NOT_YET, LoadingState.NOT_YET),
                List.of(
                        model.runs().lookedProperty().get(),
                        model.folderProperty().get()));
        toDo.remove().run();
        assertEquals(
                List.of(LoadingState.DONE, LoadingState.NOT_YET),
                List.of(
                        model.runs().lookedProperty().get(),
                        model.folderProperty().get()));
        toDo.remove().run();
        assertEquals(
                List.of(LoadingState.DONE, LoadingState.DONE),
                List.of(
                        model.runs().lookedProperty().get(),
                        model.folderProperty().get()));
    }

    @Test
    void planFilesThatAreNotUsedAreOneLineThatNamesWhereTheReasonStands() {
        assertEquals(
                "Plan files that are not used: 2. About says why.",
                model(InventedPlans::unsound).refusedProperty().get());
        assertEquals("", model(Catalogue::ofDemoParts).refusedProperty().get());
    }

    @Test
    void aPlanFolderThatCannotBeReadIsSaidAndKeepsNobodyFromTheRuns() {
        workshop.setUp("014");
        HomeViewModel model = model(() -> {
            throw new IOException("gone");
        });
        assertEquals(1, workshop.told.size());
        assertEquals(1, model.runs().rowsProperty().get().size());
        assertEquals(
                List.of(LoadingState.DONE, LoadingState.FAILED),
                List.of(
                        model.runs().lookedProperty().get(),
                        model.folderProperty().get()));
    }

    @Test
    void aRemarkNamesThePartsItIsOf() {
        String plan =
                """
                format = 1
                part = "%s"
                revision = "A"
                issue = "1"
                name = "Ring"
                material = "steel C45"
                drawing = "1"
                unit = "mm"
                remark = "%s"
                [[operation]]
                number = 10
                name = "Turn"
                [[step]]
                number = 1
                operation = 10
                kind = "look"
                name = "Edges"
                what = "No burr."
                """;
        List<String> numbers = new ArrayList<>();
        List<Catalogue.Listed> listed = Stream.of("Invented", "Keep the drawing shut away", "Invented")
                .map(remark -> {
                    String number = "R-" + numbers.size();
                    numbers.add(number);
                    return new Catalogue.Listed(number + ".toml", InventedPlans.read(plan.formatted(number, remark)));
                })
                .toList();
        assertEquals(
                "R-0 rev A, R-2 rev A: Invented\nR-1 rev A: Keep the drawing shut away",
                model(() -> new Catalogue(listed, List.of())).remarkProperty().get());
    }

    /** The clock stands at Wednesday, 25 November 2026, 09:31 at +01:00. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            2026-11-25T08:22:00Z,      09:22
            2026-11-24T23:30:00Z,      00:30
            2026-11-24T22:30:00Z,      yesterday
            2026-11-23T10:00:00Z,      Monday
            2026-11-19T10:00:00Z,      Thursday
            2026-11-18T10:00:00Z,      18 Nov 2026
            2026-11-26T10:00:00Z,      26 Nov 2026
            """)
    void aMomentIsSaidAsPeopleSayIt(String moment, String said) {
        assertEquals(
                said,
                new When(OffsetDateTime.now(Workshop.CLOCK), Words.of(Locale.ENGLISH))
                        .of(OffsetDateTime.parse(moment)));
    }
}
