package org.tenthwise.app.ui;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.ui.about.AboutFacts;
import org.tenthwise.app.ui.about.AboutView;
import org.tenthwise.app.ui.about.AboutViewModel;
import org.tenthwise.app.ui.about.LicencesView;
import org.tenthwise.app.ui.about.LicencesViewModel;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.app.ui.shell.Notice.NoticeKey;
import org.tenthwise.checklists.catalogue.Catalogue;

/** What the program is, what it is used for with care, and the licences it comes under, on every display. */
class AboutScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    @Test
    void aboutWithPlanFilesThatAreNotUsedHoldsEverywhere() {
        seen("about", "refused", window -> {
            AboutViewModel model = new AboutViewModel(
                    new AboutFacts("0.1.0", "here", "there", List::of, Optional::empty, List::of),
                    InventedPlans::unsound,
                    workshop.tasks,
                    words,
                    workshop);
            model.load();
            return new AboutView(model, words, workshop);
        });
    }

    @Test
    void whatAnotherKeyLeadsToIsSaidEverywhere() {
        seen("about", "new-key", window -> new AboutView(model(), words, workshop), window -> window.shell()
                .tell(new Notice(
                        words.say("about.new-key.title"),
                        words.say("about.new-key.leads-to"),
                        List.of(
                                new NoticeKey(words.say("about.new-key.make"), () -> {}),
                                new NoticeKey(words.say("about.new-key.leave"), () -> {})))));
    }

    private AboutViewModel model() {
        return new AboutViewModel(
                new AboutFacts("0.1.0", "here", "there", () -> List.of("Key"), Optional::empty, List::of),
                Catalogue::ofDemoParts,
                workshop.tasks,
                words,
                workshop);
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
                                        Optional::empty,
                                        () -> List.of(
                                                "The last complete backup was made on 30 November 2026, 07:15.",
                                                "One is made after each closed run and once a day.")),
                                Catalogue::ofDemoParts,
                                workshop.tasks,
                                words,
                                workshop),
                        words,
                        workshop));
    }
}
