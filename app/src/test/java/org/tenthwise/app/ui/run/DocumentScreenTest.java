package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.text.DocumentWords;
import org.tenthwise.app.ui.run.RunScreenState.Act;
import org.tenthwise.app.ui.run.RunScreenState.Meaning;
import org.tenthwise.app.ui.run.RunScreenState.PromptPanel;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.SignedAs;

/** A document in its turn, and what is proven elsewhere. */
class DocumentScreenTest extends RunAtHand {

    static final String STEPS =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "document"
            name = "Crack test"
            what = "Report of the penetrant test, before the thread is cut."
            where = "crack test"

            [[elsewhere]]
            number = 11
            balloon = "11"
            count = 2
            name = "Position of the pattern"
            requirement = "2X Ø8 position Ø0.05 A B"
            where = "coordinate machine"
            upper = 0.050

            [[process]]
            number = 12
            name = "Ageing"
            specification = "Specification 64"
            supplier = "Invented Heat Treatment"
            """;

    static final Plan PLAN = InventedPlans.inMillimetres(STEPS);

    @BeforeEach
    void withDocuments() throws Exception {
        beginARunOf(PLAN);
    }

    private void give(String number, Document.Says says, String... figures) {
        try {
            assertTrue(run.session
                    .documents()
                    .give(
                            number,
                            LocalDate.parse("2020-11-20"),
                            says,
                            "Measuring room",
                            Stream.of(figures)
                                    .map(figure -> new Written(figure, Unit.MILLIMETRE))
                                    .toList())
                    .objection()
                    .isEmpty());
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void aDocumentAskedForHoldsEverywhere() {
        seen("run", "document", this::screen);
        run.session.goTo(11);
        seen("run", "document-elsewhere", this::screen);
        give("CM-118", Document.Says.FIGURES, "0.021", "0.062");
        seen("run", "document-out", this::screen);
    }

    @Test
    void theLargeKeyEntersOneAndThenGoesOn() {
        RunViewModel model = atOnce();
        assertEquals(Act.DOCUMENT, model.commitProperty().get().act());
        model.press();
        assertEquals(List.of("form DOCUMENT " + run.session.id()), ways.asked);
        give("PT-1", Document.Says.CONFORMS);
        model.refresh();
        assertEquals(Act.SIGN, model.commitProperty().get().act(), "what is proven elsewhere is not waited for here");
        assertEquals(
                new DocumentWords(words)
                        .whole(run.session.state().pass().giving().orElseThrow().document()),
                ((PromptPanel.Ask) model.shownProperty().get().panel()).words());
    }

    /** Before a document and after it, and in a closed run at a check of the machine. */
    @Test
    void aKeyLeadsToAllOfThem() throws Exception {
        assertEquals(Optional.of(words.say("run.documents", 3)), keyToAll());
        give("PT-1", Document.Says.CONFORMS);
        assertEquals(Optional.of(words.say("run.documents", 2)), keyToAll());
        run.session.close("Setter 1", SignedAs.MACHINED_AND_MEASURED);
        run.session.goTo(1);
        assertEquals(
                words.say("run.closed.documents"),
                ((PromptPanel.Ask) atOnce().shownProperty().get().panel()).words());
        RunViewModel model = atOnce();
        model.reply(new Meaning.Documents());
        assertEquals(List.of("documents " + run.session.id()), ways.asked);
    }

    private Optional<String> keyToAll() {
        return ((PromptPanel.Ask) atOnce().shownProperty().get().panel())
                .replies().stream()
                        .filter(key -> key.meaning() instanceof Meaning.Documents)
                        .map(RunScreenState.ReplyKey::label)
                        .findFirst();
    }

    @Test
    void oneThatDoesNotConformLeadsToADisposition() {
        run.session.goTo(11);
        give("CM-118", Document.Says.DOES_NOT_CONFORM);
        RunViewModel model = atOnce();
        assertEquals(Act.DISPOSE, model.commitProperty().get().act());
        assertTrue(model.shownProperty().get().allowed().dispose());
    }

    @Test
    void inAClosedRunWhatIsProvenElsewhereIsStillAskedFor() throws Exception {
        give("PT-1", Document.Says.CONFORMS);
        run.session.close("Setter 1", SignedAs.MACHINED_AND_MEASURED);
        assertEquals(Act.RECORD, atOnce().commitProperty().get().act());
        run.session.goTo(11);
        assertEquals(Act.DOCUMENT, atOnce().commitProperty().get().act());
        give("CM-118", Document.Says.FIGURES, "0.021", "0.030");
        assertEquals(Act.RECORD, atOnce().commitProperty().get().act());
        assertFalse(run.session.state().asked().isShut());
    }
}
