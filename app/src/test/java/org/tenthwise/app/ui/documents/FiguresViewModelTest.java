package org.tenthwise.app.ui.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.ProvenElsewhere;
import org.tenthwise.app.device.FilesInFolders;
import org.tenthwise.app.drafting.FiguresText;
import org.tenthwise.app.session.FiguresReport;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Watch;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.documents.FiguresViewModel.Seen;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.verdict.VerdictKind;

/** Figures of positions 41 and 42, two of each, at most 0.050. */
class FiguresViewModelTest {

    private static final String TABLE = "balloon,value\n41,0.021\n41,0.030\n42,0.021\n42,0.062\n";

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @TempDir
    private Path folder;

    private final Watch watch = Watch.held();
    private RunSession session;
    private FiguresViewModel model;

    @BeforeEach
    void begun() {
        session = workshop.begin(ProvenElsewhere.PLAN, "014");
    }

    private Seen seen(String text) throws IOException {
        model = new FiguresViewModel(
                session,
                Files.writeString(folder.resolve("CM-118.csv"), text),
                new FiguresReport("CM-118", LocalDate.parse("2026-11-20"), "Measuring room"),
                workshop.tasks,
                workshop.words,
                workshop,
                watch);
        model.load();
        return model.seenProperty().get().orElseThrow();
    }

    private VerdictKind standing(int step) {
        return session.state().sheet().line(step).finding().verdict().standing();
    }

    @Test
    void whatItAnswersIsShownWithItsVerdictBeforeItCounts() throws IOException {
        Seen seen = seen(TABLE);
        assertEquals("CM-118.csv: 2 checks, none refused", seen.said());
        assertEquals(
                List.of(VerdictKind.PASS, VerdictKind.FAIL),
                seen.rows().stream().map(DocumentRow::standing).toList());
        assertEquals(
                "CM-118, 20 Nov 2026: figures, Measuring room: 0.021 mm, 0.062 mm",
                seen.rows().get(1).document());
        assertEquals("0.012 mm above the upper limit.", seen.rows().get(1).distance());
        assertEquals(VerdictKind.OPEN, standing(42));
    }

    @Test
    void itIsEnteredOnlyOnceItCouldBeSeen() throws IOException {
        seen(TABLE);
        model.enter();
        assertEquals(VerdictKind.OPEN, standing(42), "the second tap of a finger that bounced");
        watch.pass(900);
        model.enter();
        assertEquals(VerdictKind.PASS, standing(41));
        assertEquals(VerdictKind.FAIL, standing(42));
        assertEquals(List.of("back", "back"), workshop.asked);
    }

    @Test
    void aTableThatDisagreesIsToldLineByLineAndNothingIsEntered() throws IOException {
        Seen seen = seen("balloon,value\n41,0.021\n99,0.030\n42,0,021\n");
        assertEquals("Nothing is taken of CM-118.csv", seen.said());
        assertEquals(
                List.of("Line 3: the plan has no check \"99\"", "Line 4: 3 cells, and the first line names 2"),
                seen.refused());
        assertFalse(seen.mayEnter());
        watch.pass(900);
        model.enter();
        assertEquals(VerdictKind.OPEN, standing(41));
    }

    @Test
    void aTableOfAnotherPartIsRefused() throws IOException {
        Seen seen = seen("serial,balloon,value\n013,41,0.021\n013,41,0.030\n");
        assertEquals(
                "Line 2: the line is of serial \"013\", the part is \"014\"",
                seen.refused().get(0));
    }

    @Test
    void aCheckWithADocumentHoldsTheWholeTableBack() throws IOException {
        Workshop.must(() -> {
            session.goTo(41);
            return session.documents()
                    .give("CM-1", LocalDate.parse("2026-11-20"), Document.Says.CONFORMS, "Measuring room", List.of());
        });
        Seen seen = seen(TABLE);
        assertEquals("CM-118.csv: 2 checks, 1 refused", seen.said());
        assertEquals(1, seen.rows().size());
        assertTrue(seen.refused().get(0).startsWith("41  Position 41: refused. "), () -> seen.refused()
                .get(0));
        watch.pass(900);
        model.enter();
        assertEquals(VerdictKind.OPEN, standing(42));
    }

    /** The list of files, then number, date and name as of any document. */
    @Test
    void fileNumberDateAndNameAreAsked() throws IOException {
        Files.writeString(folder.resolve("CM-118.csv"), TABLE);
        choose("2026-11-20");
        assertEquals(
                List.of("figures CM-118.csv FiguresReport[number=CM-118, dated=2026-11-20, by=Measuring room]"),
                workshop.asked);
    }

    @Test
    void aDateThatIsNoneLeadsNowhere() throws IOException {
        Files.writeString(folder.resolve("CM-118.csv"), TABLE);
        FiguresChoiceViewModel choice = choose("20.11.2026");
        assertEquals(1, workshop.told.size());
        assertEquals("dated", choice.form().inHandProperty().get().id());
        assertEquals(List.of(), workshop.asked);
    }

    @Test
    void whereNoFileLiesThatIsSaid() {
        choice();
        assertEquals(List.of("back"), workshop.asked);
        assertEquals(
                "There is no CSV file in " + folder + ". Put the table there.",
                workshop.told.get(0).words());
    }

    private FiguresChoiceViewModel choice() {
        FiguresChoiceViewModel choice = new FiguresChoiceViewModel(
                workshop.inHand(session),
                new FilesInFolders(List.of(folder), FiguresText.ENDING),
                workshop.words,
                workshop,
                Workshop.CLOCK);
        choice.load();
        return choice;
    }

    private FiguresChoiceViewModel choose(String dated) {
        FiguresChoiceViewModel choice = choice();
        first(choice.form().fields().get(0));
        choice.form().goOn();
        type(choice, "CM-118");
        type(choice, dated);
        type(choice, "Measuring room");
        return choice;
    }

    private static <T> void first(Field<T> field) {
        field.choice().choose(field.choice().offeredProperty().get().get(0));
    }

    private static void type(FiguresChoiceViewModel choice, String text) {
        choice.form().inHandProperty().get().type();
        text.chars().mapToObj(Character::toString).forEach(choice.form()::character);
        choice.form().goOn();
    }
}
