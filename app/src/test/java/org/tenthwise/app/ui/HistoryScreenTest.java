package org.tenthwise.app.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.app.series.Followed;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SeriesSums;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.history.CharacteristicsView;
import org.tenthwise.app.ui.history.CharacteristicsViewModel;
import org.tenthwise.app.ui.history.CourseView;
import org.tenthwise.app.ui.history.CourseViewModel;
import org.tenthwise.app.ui.history.PartFindViewModel;
import org.tenthwise.app.ui.history.PartsMade;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.model.plan.Plan;

/** What was read over the parts, in its states, on every display. */
class HistoryScreenTest extends ScreenTest {

    private static final Sought OF_PART = Sought.ALL.with(SoughtBy.PART_NUMBER, PartsMade.PART);

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private PartsMade parts() {
        return new PartsMade(workshop);
    }

    private Screen history(Window window) {
        return new CharacteristicsView(
                new CharacteristicsViewModel(
                        Optional.empty(), workshop.shop, Workshop.views(), workshop.tasks, words, workshop),
                words,
                window.pictures(),
                workshop);
    }

    private Characteristic characteristic(int place) {
        return new Followed(workshop.shop.history()).of(OF_PART).get(place).characteristic();
    }

    private Screen course(Window window, Sought sought, Characteristic characteristic) {
        return course(window, sought, Optional.of(characteristic));
    }

    private Screen course(Window window, Sought sought, Optional<Characteristic> characteristic) {
        return new CourseView(
                new CourseViewModel(
                        sought,
                        characteristic,
                        workshop.shop,
                        new SeriesSums(Handbook.sums()),
                        Workshop.views(),
                        workshop.tasks,
                        words,
                        workshop),
                words,
                window.pictures(),
                workshop);
    }

    private void seenCourse(String state, int place) {
        seenCourse(state, place, window -> {});
    }

    private void seenCourse(String state, int place, Consumer<Window> then) {
        Characteristic characteristic = characteristic(place);
        seen("course", state, window -> course(window, OF_PART, characteristic), then);
    }

    @Test
    void aShopWithoutPartsHoldsEverywhere() {
        seen("history", "none", this::history);
    }

    @Test
    void onePartHoldsEverywhere() {
        parts().bores(PartsMade.plan(), "Setter 2", 12);
        seen("history", "one", this::history);
        seenCourse("one", 0);
    }

    @Test
    void fourPartsHoldEverywhere() {
        parts().bores(PartsMade.plan(), "Setter 2", 12, 16, 23, 9);
        seen("history", "four", this::history);
        seenCourse("four", 0);
        seenCourse("four-several-sizes", 1);
        seenCourse("four-one-limit", 2);
    }

    @Test
    void twelvePartsWithADriftSinceAnotherGaugeHoldEverywhere() {
        parts().bores(PartsMade.plan(), "Setter 2", 16, 15, 12)
                .bores(
                        PartsMade.plan("1", "30.000", "30.021", "", "MC-9"),
                        "Setter 2",
                        20,
                        19,
                        18,
                        16,
                        15,
                        14,
                        12,
                        11,
                        10);
        seenCourse("twelve-drifting", 0);
        seenCourse("twelve-touched", 0, window -> press(window.scene(), "part-before"));
    }

    @Test
    void twelvePartsThatAreTooFewHoldEverywhere() {
        parts().bores(PartsMade.plan(), "Setter 2", 10, 14, 6, 12, 8, 15, 10, 4, 13, 9, 11, 7);
        seenCourse("twelve-too-few", 0);
        seen("course", "deviations", window -> course(window, OF_PART, Optional.empty()));
    }

    @Test
    void partsThatContradictWhatIsAskedForHoldEverywhere() {
        parts().bores(
                        PartsMade.plan(),
                        "Setter 2",
                        2,
                        19,
                        5,
                        17,
                        1,
                        20,
                        9,
                        3,
                        18,
                        12,
                        2,
                        21,
                        6,
                        16,
                        11,
                        1,
                        19,
                        4,
                        20,
                        8);
        seenCourse("contradicts", 0);
    }

    @Test
    void finalSizesHoldEverywhere() {
        parts().bores(PartsMade.plan(), "Setter 2", 10, 14, 6, 12, 8, 15);
        seenCourse("final", 0, window -> press(window.scene(), "size"));
    }

    @Test
    void fiftyPartsHoldEverywhere() {
        parts().bores(PartsMade.plan(), "Setter 2", PartsMade.scattered(50));
        seen("history", "fifty", this::history);
        seenCourse("fifty", 0);
    }

    @Test
    void limitsThatChangedHoldEverywhere() {
        parts().bores(PartsMade.plan(), "Setter 2", 12, 16, 14)
                .bores(PartsMade.plan("2", "30.002", "30.018", "0.002", "MC-3"), "Setter 2", 12, 10, 15)
                .bores(PartsMade.plan("3", "30.005", "30.026", "", "MC-3"), "Setter 2", 17, 12);
        seenCourse("changed-limits", 0);
    }

    @Test
    void aSeriesBrokenAtEveryPartHoldsEverywhere() {
        PartsMade parts = parts();
        for (int i = 0; i < 12; i++) {
            Plan plan = PartsMade.plan("1", "30.000", "30.021", "", "MC-" + i % 4);
            parts.part(plan, "Setter " + i % 3, "AB-77" + i / 2, "30.01" + i % 7);
        }
        seenCourse("broken", 0);
        seenCourse("broken-across", 0, window -> press(window.scene(), "across"));
    }

    @Test
    void partsThatWereNotReadToTheirEndAreNamedEverywhere() {
        PartsMade parts = parts().bores(PartsMade.plan(), "Setter 2", 12);
        parts.part(PartsMade.plan(), "Setter 2", "AB-7731", "");
        parts.part(PartsMade.plan(), "Setter 2", "AB-7731", "31.5");
        seenCourse("unread", 0);
    }

    @Test
    void whatIsPickedByWhatItCameToHoldsEverywhere() {
        parts().bores(PartsMade.plan(), "Setter 2", 12, 25, 14, 23);
        Characteristic journal = characteristic(0);
        seen("course", "picked", window -> course(window, OF_PART.with(SoughtBy.VERDICT, "fail"), journal));
        seen("history", "found-none", this::history, window -> {
            CharacteristicsView view =
                    (CharacteristicsView) window.shell().inHand().orElseThrow();
            view.model().seek(OF_PART.with(SoughtBy.LOT, "AB-7732").with(SoughtBy.FROM, "2026-11-25"));
        });
    }

    @Test
    void whatPartsAreFoundByIsChosenEverywhere() {
        parts().bores(PartsMade.plan(), "Setter 2", 12, 25);
        List<Series> known = new Followed(workshop.shop.history()).of(OF_PART);
        seen(
                "history",
                "find",
                window -> FormView.titled(
                        words.say("history.find.title"),
                        new PartFindViewModel(OF_PART, List.of(PartsMade.PART), known, words, workshop, found -> {})
                                .form(),
                        words,
                        workshop::back,
                        () -> {}));
    }
}
