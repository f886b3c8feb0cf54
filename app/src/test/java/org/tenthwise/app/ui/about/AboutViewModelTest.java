package org.tenthwise.app.ui.about;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.ui.Workshop;

class AboutViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @Test
    void aPlanFileThatIsNotUsedIsOneLine() {
        AboutViewModel model = new AboutViewModel(
                new AboutFacts("0.1.0", "here", "there", List::of, List::of),
                InventedPlans::unsound,
                workshop.tasks,
                workshop.words);
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
