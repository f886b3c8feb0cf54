package org.tenthwise.app.ui.deed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Pass;

class DocumentFormTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunSession session;
    private StepForm model;
    private LocalDate today;

    @BeforeEach
    void atTheFirstElsewhere() {
        session = Workshop.must(() -> workshop.shop.begin(new RunHeader(
                InventedPlans.inMillimetres(
                        """
                        [[step]]
                        number = 1
                        operation = 10
                        kind = "look"
                        name = "Edges"
                        what = "Edges are broken."

                        [[elsewhere]]
                        number = 11
                        name = "Position"
                        where = "coordinate machine"
                        count = 2
                        upper = 0.050

                        [[process]]
                        number = 12
                        name = "Ageing"
                        supplier = "Invented Heat Treatment"
                        """),
                "1",
                "L-1",
                "Lathe 4",
                "Setter 2")));
        today = LocalDate.now(Workshop.CLOCK);
        at(11);
    }

    private void at(int step) {
        session.goTo(step);
        model = new DocumentForm(workshop.inHand(session), workshop.words, workshop, Workshop.CLOCK);
        model.load();
    }

    private Optional<Document> given() {
        return session.state().pass().giving().map(Pass.Giving::document);
    }

    private void choose(String answer) {
        choose(model.form().inHandProperty().get(), answer);
    }

    private <T> void choose(Field<T> field, String answer) {
        T found = field.choice().offeredProperty().get().stream()
                .filter(one -> field.reads(one).equals(answer))
                .findFirst()
                .orElseThrow(() -> new AssertionError(answer + " is not offered for " + field.id()));
        field.choice().choose(found);
        if (model.form().inHandProperty().get() == field) {
            model.form().goOn();
        }
    }

    private void type(String text) {
        model.form().inHandProperty().get().type();
        text.chars().mapToObj(Character::toString).forEach(model.form()::character);
        model.form().goOn();
    }

    private void chooseToday() {
        Field<?> dated = model.form().inHandProperty().get();
        assertEquals("dated", dated.id());
        first(dated);
    }

    private <T> void first(Field<T> field) {
        field.choice().choose(field.choice().offeredProperty().get().get(0));
        if (model.form().inHandProperty().get() == field) {
            model.form().goOn();
        }
    }

    @Test
    void verdictNumberDateAndWhoSaysSoAreAsked() {
        at(12);
        choose("Conforms");
        type("HT-77");
        chooseToday();
        choose("Invented Heat Treatment");
        assertEquals(
                Optional.of(new Document("HT-77", today, Document.Says.CONFORMS, "Invented Heat Treatment", List.of())),
                given());
    }

    @Test
    void figuresAreTypedWithASpaceBetweenThem() {
        choose("Figures, judged here");
        type("0.021 0.0300");
        type("CM-118");
        chooseToday();
        choose("coordinate machine");
        assertEquals(
                List.of(new Written("0.021", Unit.MILLIMETRE), new Written("0.0300", Unit.MILLIMETRE)),
                given().orElseThrow().figures());
    }

    @Test
    void whatIsNoFigureIsToldAndNothingKept() {
        choose("Figures, judged here");
        type("0.021 0.03x");
        type("CM-118");
        chooseToday();
        choose("coordinate machine");
        assertEquals(Optional.empty(), given());
        assertEquals(1, workshop.told.size());
        assertEquals("figures", model.form().inHandProperty().get().id());
    }

    @Test
    void aDateThatIsNoneIsToldAndNothingKept() {
        at(12);
        choose("Conforms");
        type("HT-77");
        type("20.11.26");
        choose("Invented Heat Treatment");
        assertEquals(Optional.empty(), given());
        assertTrue(workshop.told.get(0).toString().contains("year-month-day"), () -> workshop.told.toString());
    }

    @Test
    void oneThatIsNotThereYetNeedsNoNumber() {
        at(12);
        choose("Not there yet");
        chooseToday();
        choose("Invented Heat Treatment");
        assertEquals(Document.Says.NOT_YET, given().orElseThrow().says());
    }

    @Test
    void figuresAreOfferedOnlyWhereThereAreLimits() {
        at(12);
        assertEquals(
                List.of("Conforms", "Does not conform", "Not there yet"),
                model.form().inHandProperty().get().choice().offeredProperty().get().stream()
                        .map(one -> workshop.words.say("document.says.key", (Document.Says) one))
                        .toList());
    }

    /** One report of the coordinate machine proves many characteristics. */
    @Test
    void whatWasEnteredForAnotherCheckLiesReady() {
        Workshop.must(() -> session.documents()
                .give(
                        "CM-118",
                        today,
                        Document.Says.FIGURES,
                        "Measuring room",
                        List.of(new Written("0.021", Unit.MILLIMETRE), new Written("0.022", Unit.MILLIMETRE))));
        at(12);
        choose("Conforms");
        choose("CM-118");
        chooseToday();
        choose("Measuring room");
        assertEquals("CM-118", given().orElseThrow().number());
    }
}
