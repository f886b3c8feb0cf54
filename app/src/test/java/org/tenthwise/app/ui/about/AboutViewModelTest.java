package org.tenthwise.app.ui.about;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.checklists.catalogue.Catalogue;

class AboutViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @Test
    void anotherKeyIsMadeOnlyAfterWhatItLeadsToWasSaid() {
        List<String> made = new ArrayList<>();
        AboutViewModel model = new AboutViewModel(
                new AboutFacts(
                        "0.1.0",
                        "here",
                        "there",
                        () -> List.of("key " + made.size()),
                        () -> {
                            made.add("another");
                            return Optional.of(Path.of("shop.db-station-key.p12.old"));
                        },
                        List::of),
                Catalogue::ofDemoParts,
                workshop.tasks,
                workshop.words,
                workshop);
        model.load();
        model.newKey();
        Notice asked = workshop.told.get(0);
        assertTrue(asked.words().contains("must be told the new fingerprint"), asked::words);
        assertTrue(asked.words().contains("whoever else has it can still seal with it"), asked::words);
        assertEquals(List.of(), made);
        asked.replies().get(1).then().run();
        assertEquals(List.of(), made, "it was left as it is");
        asked.replies().get(0).then().run();
        assertEquals(List.of("another"), made);
        assertTrue(workshop.told.get(1).words().contains("shop.db-station-key.p12.old"));
        assertTrue(model.sectionsProperty().get().stream()
                .anyMatch(section -> section.paragraphs().equals(List.of("key 1"))));
    }

    @Test
    void aPlanFileThatIsNotUsedIsOneLine() {
        AboutViewModel model = new AboutViewModel(
                new AboutFacts("0.1.0", "here", "there", List::of, Optional::empty, List::of),
                InventedPlans::unsound,
                workshop.tasks,
                workshop.words,
                workshop);
        assertTrue(model.sectionsProperty().get().stream()
                .noneMatch(section -> section.heading().equals("Plan files that are not used")));
        model.load();
        assertEquals(
                List.of(new AboutViewModel.AboutSection(
                        "Plan files that are not used",
                        List.of(
                                "KX-9.toml, line 15: check 7: \"method\" is missing (1 more error)",
                                "x.toml, line 1: is a folder, not a plan file"))),
                model.sectionsProperty().get().stream()
                        .filter(section -> section.heading().equals("Plan files that are not used"))
                        .toList());
    }
}
