package org.tenthwise.app.ui.about;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.checklists.rules.PlanProblem;

class AboutViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @Test
    void aPlanFileThatIsNotUsedIsOneLine() {
        Catalogue unsound = new Catalogue(
                List.of(),
                List.of(
                        new Catalogue.RefusedFile(
                                "KX-9.toml", List.of(new PlanProblem(7, 3, "so"), new PlanProblem(8, 1, "and so"))),
                        new Catalogue.RefusedFile(
                                "x.toml", List.of(new PlanProblem(1, 1, "is a folder, not a plan file")))));
        AboutViewModel model = new AboutViewModel(
                new AboutFacts("0.1.0", "here", "there", List::of), () -> unsound, workshop.errands, workshop.words);
        assertTrue(model.sectionsProperty().get().stream()
                .noneMatch(section -> section.heading().equals("Plan files that are not used")));
        model.load();
        assertEquals(
                List.of(new AboutViewModel.AboutSection(
                        "Plan files that are not used",
                        List.of(
                                "KX-9.toml, line 7: so (1 more to put right)",
                                "x.toml, line 1: is a folder, not a plan file"))),
                model.sectionsProperty().get().stream()
                        .filter(section -> section.heading().equals("Plan files that are not used"))
                        .toList());
    }
}
