package org.tenthwise.app.ui.about;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.ui.Workshop;

class LicencesViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @Test
    void ourOwnLicenceIsReadFirst() {
        LicencesViewModel model = new LicencesViewModel(workshop.words);
        LicencesViewModel.Work first = model.chosenProperty().get();
        assertEquals("Tenthwise", first.name());
        assertTrue(first.paragraphs().get(0).startsWith("GNU GENERAL PUBLIC LICENSE Version 3"));
    }

    @Test
    void aLibraryIsReadWithItsLicenceAndWithWhatItAdds() {
        LicencesViewModel model = new LicencesViewModel(workshop.words);
        model.choose(model.works().stream()
                .filter(work -> work.name().equals("PDFBox"))
                .findFirst()
                .orElseThrow());
        List<String> read = model.chosenProperty().get().paragraphs();
        assertTrue(read.get(0).startsWith("Apache License"), () -> read.get(0));
        assertTrue(read.stream().anyMatch(line -> line.contains("Includes the Adobe Glyph List")));
    }

    @Test
    void noPieceIsLongerThanAPageAndNoWordIsLost() {
        LicencesViewModel model = new LicencesViewModel(workshop.words);
        for (LicencesViewModel.Work work : model.works()) {
            work.paragraphs().forEach(piece -> assertTrue(piece.length() <= 400, piece));
        }
        String ours = String.join(" ", model.works().get(0).paragraphs());
        String file = LicenceText.resource("/META-INF/licenses/GPL-3.0.txt");
        assertEquals(file.replaceAll("\\s+", " ").strip(), ours.replaceAll("\\s+", " "));
    }
}
