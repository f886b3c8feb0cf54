package org.tenthwise.app.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.device.AskedViewer;
import org.tenthwise.app.export.CsvRecord;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.RecordLayout;
import org.tenthwise.app.export.pdf.Scene;
import org.tenthwise.app.handout.Handout;
import org.tenthwise.app.ui.pages.PagesView;
import org.tenthwise.app.ui.pages.PagesViewModel;
import org.tenthwise.app.ui.shell.Screen;

/** The pages of a record, whole and larger, on every display. */
class PagesScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private Screen pages(Window window, PagesViewModel model) {
        return new PagesView(model, words, window.pictures(), workshop);
    }

    private PagesViewModel model() {
        return new PagesViewModel(
                "LG-2207-C-014",
                new Handout(
                        List.of(new CsvRecord()),
                        (run, as) -> Path.of(run),
                        scope -> Optional.empty(),
                        run -> new RecordLayout(words, Paper.A4, Records.DATA).pages(Scene.FAILED.evidence()),
                        AskedViewer.none()),
                workshop.tasks,
                words);
    }

    @Test
    void aWholePageHoldsEverywhere() {
        seen("pages", "whole", window -> pages(window, model()));
    }

    @Test
    void aPageAsWideAsTheScreenHoldsEverywhere() {
        seen("pages", "larger", window -> {
            PagesViewModel model = model();
            model.changeSize();
            return pages(window, model);
        });
    }
}
