package org.tenthwise.app.ui;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.ui.guide.GuideView;
import org.tenthwise.app.ui.guide.GuideViewModel;
import org.tenthwise.app.ui.guide.GuideViewModel.GuidePage;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.checklists.catalogue.Catalogue;

/** The first minutes, a page each, on every display. */
class GuideScreenTest extends ScreenTest {

    private static final String PLANS_AT = "/home/shop/tenthwise/plans";

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private Screen guide(Window window, GuidePage page) {
        GuideViewModel model =
                new GuideViewModel(PLANS_AT, Catalogue::ofDemoParts, workshop.shop, workshop.tasks, words, workshop);
        for (int i = 0; i < page.ordinal(); i++) {
            model.goOn();
        }
        return new GuideView(model, words, window.pictures(), workshop);
    }

    @Test
    void howAPlanComesInHoldsEverywhere() {
        seen("guide", "plans", window -> guide(window, GuidePage.PLANS));
    }

    @Test
    void aPartToTryHoldsEverywhere() {
        seen("guide", "part", window -> guide(window, GuidePage.PART));
    }

    @Test
    void whatEachKeyDoesHoldsEverywhere() {
        seen("guide", "keys", window -> guide(window, GuidePage.KEYS));
    }

    @Test
    void machinesAndPeopleHoldEverywhere() {
        workshop.shop.names().add(ShopNames.Kind.MACHINE, "Lathe 4");
        workshop.shop.names().add(ShopNames.Kind.PERSON, "Setter 2");
        seen("guide", "names", window -> guide(window, GuidePage.NAMES));
    }
}
