package org.tenthwise.app.ui.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.guide.GuideViewModel.GuidePage;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;

class GuideViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private GuideViewModel model(Callable<Catalogue> plans) {
        GuideViewModel model =
                new GuideViewModel("/plans", plans, workshop.shop, workshop.tasks, workshop.words, workshop);
        model.load();
        return model;
    }

    @Test
    void thePlanThatIsShownIsSound() {
        assertInstanceOf(PlanReading.Good.class, new PlanReader().read(SmallPlan.text()));
    }

    @Test
    void theFolderIsNamedInFullAndTheCommandAsItIsTyped() {
        List<String> said = model(Catalogue::ofDemoParts).said(GuidePage.PLANS);
        assertTrue(said.contains("/plans"), said::toString);
        assertTrue(String.join(" ", said).contains("java -jar tenthwise.jar check"), said::toString);
    }

    @Test
    void thePartToTryIsSaidToBeInventedAndIsBegun() {
        GuideViewModel model = model(Catalogue::ofDemoParts);
        assertEquals(
                "LG-2207, Screw carrier, lock gate, is invented. Nothing made to it is fit for use.",
                model.said(GuidePage.PART).get(0));
        assertTrue(model.offeredProperty().get());
        model.begin();
        assertEquals(List.of("begin LG-2207"), workshop.asked);
    }

    @Test
    void aShopWithPlansOfItsOwnIsOfferedNoInventedPart() {
        assertFalse(model(InventedPlans::unsound).offeredProperty().get());
    }

    @Test
    void thePagesFollowOneAnotherFromThePartToTryAndTheLastLeadsBack() {
        GuideViewModel model = model(Catalogue::ofDemoParts);
        assertEquals(GuidePage.PART, model.pageProperty().get());
        model.goBack();
        for (GuidePage page : GuidePage.values()) {
            assertEquals(page, model.pageProperty().get());
            assertEquals(List.of(), workshop.asked);
            model.goOn();
        }
        assertEquals(List.of("back"), workshop.asked);
        model.goBack();
        assertEquals(GuidePage.KEYS, model.pageProperty().get());
    }

    @Test
    void everyPartOfTheRunScreenIsNamedByItsNumber() {
        List<String> said = model(Catalogue::ofDemoParts).said(GuidePage.KEYS);
        for (int part = 1; part <= 8; part++) {
            assertTrue(said.get(part - 1).startsWith(part + " "), said.get(part - 1));
        }
    }

    @Test
    void whatWasNamedIsListed() {
        workshop.shop.names().add(ShopNames.Kind.MACHINE, "Lathe 7");
        workshop.shop.names().add(ShopNames.Kind.PERSON, "Inspector 1");
        assertEquals(
                List.of("Lathe 7", "Inspector 1"),
                model(Catalogue::ofDemoParts).namesProperty().get());
    }
}
