package org.tenthwise.app.ui;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.ui.about.AboutFacts;
import org.tenthwise.app.ui.about.AboutView;
import org.tenthwise.app.ui.about.AboutViewModel;
import org.tenthwise.app.ui.about.LicencesView;
import org.tenthwise.app.ui.about.LicencesViewModel;
import org.tenthwise.checklists.catalogue.Catalogue;

/** What the program is, what it is used for with care, and the licences it comes under, on every display. */
class AboutScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    @Test
    void aboutWithPlanFilesThatAreNotUsedHoldsEverywhere() {
        seen("about", "refused", window -> {
            AboutViewModel model = new AboutViewModel(
                    new AboutFacts("0.1.0", "here", "there", List::of, List::of),
                    InventedPlans::unsound,
                    workshop.tasks,
                    words);
            model.load();
            return new AboutView(model, words, workshop);
        });
    }

    @Test
    void licencesHoldEverywhere() {
        seen(
                "licences",
                "ours",
                window -> new LicencesView(new LicencesViewModel(words), words, window.look(), workshop));
    }

    @Test
    void aboutHoldsEverywhere() {
        seen(
                "about",
                "cautions",
                window -> new AboutView(
                        new AboutViewModel(
                                new AboutFacts(
                                        "0.1.0",
                                        "/data/user/0/org.tenthwise.app/files/tenthwise.db",
                                        "/data/user/0/org.tenthwise.app/files/plans",
                                        () -> List.of(
                                                "Closed runs are sealed with the key 1a2b 3c4d 5e6f 7081.",
                                                "Its whole fingerprint: " + "1a2b3c4d5e6f7081".repeat(4)),
                                        () -> List.of(
                                                "The last complete backup was made on 30 November 2026, 07:15.",
                                                "One is made after each closed run and once a day.")),
                                Catalogue::ofDemoParts,
                                workshop.tasks,
                                words),
                        words,
                        workshop));
    }
}
