package org.tenthwise.app.ui.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.verdict.VerdictKind;

/** A look that holds a document in its turn, and three things proven elsewhere. */
class DocumentsViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunSession session;

    @BeforeEach
    void begun() {
        session = workshop.begin(
                InventedPlans.inMillimetres(
                        """
                        [[step]]
                        number = 1
                        operation = 10
                        kind = "look"
                        name = "Edges"
                        what = "Edges are broken."
                        hold = [1]

                        [[step]]
                        number = 2
                        operation = 10
                        kind = "document"
                        name = "Crack test"
                        what = "Report of the crack test."

                        [[elsewhere]]
                        number = 11
                        name = "Position"
                        where = "coordinate machine"
                        balloon = "4A"
                        count = 2
                        upper = 0.050

                        [[process]]
                        number = 12
                        name = "Ageing"
                        specification = "S-64"
                        supplier = "Invented Alloys"

                        [[test]]
                        number = 13
                        name = "Pressure test"
                        """),
                "014");
    }

    private DocumentsViewModel model() {
        DocumentsViewModel model = new DocumentsViewModel(session, workshop.tasks, workshop.words, workshop);
        model.load();
        return model;
    }

    private void give(int step, String number, Document.Says says, String... figures) {
        Workshop.must(() -> {
            session.goTo(step);
            return session.documents()
                    .give(
                            number,
                            LocalDate.parse("2026-11-20"),
                            says,
                            "Measuring room",
                            Stream.of(figures)
                                    .map(figure -> new Written(figure, Unit.MILLIMETRE))
                                    .toList());
        });
    }

    private static List<Integer> steps(DocumentsViewModel model) {
        return model.rowsValue().getValue().stream().map(DocumentRow::step).toList();
    }

    private DocumentRow row(int step) {
        return model().rowsValue().getValue().stream()
                .filter(row -> row.step() == step)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsStillToComeStandsFirstAndSaysWhereItIsProven() {
        assertEquals(List.of(2, 11, 12, 13), steps(model()), "the look is none of them");
        give(11, "CM-118", Document.Says.FIGURES, "0.021", "0.030");
        DocumentsViewModel model = model();
        assertEquals(List.of(2, 12, 13, 11), steps(model));
        assertEquals("3 of 4 open", model.countValue().getValue());
        assertEquals("Proven by: coordinate machine.", row(11).asked());
        assertEquals("Specification S-64, supplier Invented Alloys.", row(12).asked());
        assertEquals("", row(12).document());
        assertEquals(VerdictKind.OPEN, row(12).standing());
        assertTrue(row(11).balloon().contains("4A"), () -> row(11).balloon());
    }

    @Test
    void oneThatIsThereHasItsNumberDateVerdictAndName() {
        give(11, "CM-118", Document.Says.FIGURES, "0.021", "0.062");
        assertEquals("CM-118, 20 Nov 2026: figures, Measuring room: 0.021 mm, 0.062 mm", row(11).document());
        assertEquals(VerdictKind.FAIL, row(11).standing());
        assertEquals("0.012 mm above the upper limit.", row(11).distance());
        assertEquals(List.of(2, 11, 12, 13), steps(model()), "what fails is not settled by it");
    }

    @Test
    void whatIsSaidNotToBeThereYetStaysOpen() {
        give(13, "", Document.Says.NOT_YET);
        assertEquals("Not there yet, said Measuring room, 20 Nov 2026", row(13).document());
        assertEquals(VerdictKind.OPEN, row(13).standing());
        model().take(row(13));
        assertEquals(List.of("form DOCUMENT " + session.id()), workshop.asked);
    }

    @Test
    void aRowLeadsToTheFormWhereADocumentIsAskedForElseToItsStep() {
        model().take(row(12));
        give(12, "HT-1", Document.Says.CONFORMS);
        model().take(row(12));
        model().take(row(2));
        assertEquals(
                List.of("form DOCUMENT " + session.id(), "run " + session.id(), "run " + session.id()),
                workshop.asked,
                "a document that is held is not asked for");
        assertEquals(2, session.state().inHand().number());
    }

    /** The work is signed for, the papers come later: what stands in the order of work is shut by then. */
    @Test
    void aClosedRunStillAsksForWhatIsProvenElsewhere() {
        Workshop.must(() -> session.answer(Answer.YES));
        Workshop.must(() -> session.close("Setter 2", SignedAs.MACHINED_AND_MEASURED));
        model().take(row(13));
        model().take(row(2));
        assertEquals(List.of("form DOCUMENT " + session.id(), "run " + session.id()), workshop.asked);
    }

    @Test
    void aRunThatWasPutAwayAsksForNone() {
        Workshop.must(() -> session.shelf().putAway("Setter 2", "Begun twice"));
        model().take(row(13));
        assertEquals(List.of("run " + session.id()), workshop.asked);
    }

    @Test
    void whereAllAreThereThatIsSaid() {
        Workshop.must(() -> session.goTo(1));
        Workshop.must(() -> session.answer(Answer.YES));
        give(11, "CM-118", Document.Says.FIGURES, "0.021", "0.030");
        for (int step : List.of(2, 12, 13)) {
            give(step, "D-" + step, Document.Says.CONFORMS);
        }
        assertEquals("All 4 settled", model().countValue().getValue());
    }
}
