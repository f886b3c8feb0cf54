package org.tenthwise.app.ui.begin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.Beginnings;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.store.Occasions;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.OccasionSaid;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.words.Refused;

/** What is asked and told about what a run is for, before it begins. */
class PurposeFieldsTest {

    /** Look 1 is a hold point of every piece, 2 of the first, 3 of each third. */
    private static final String LOOKS =
            look(1, "hold = [1]") + look(2, "when = [\"first\"]") + look(3, "when = [\"every 3\"]");

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private BeginViewModel model() {
        return model(DemoPart.SCREW_CARRIER.plan());
    }

    private BeginViewModel model(Plan plan) {
        BeginViewModel model =
                new BeginViewModel(plan, workshop.shop, workshop.tasks, workshop.words, workshop, Workshop.CLOCK);
        model.load();
        return model;
    }

    private static void type(BeginViewModel model, String text) {
        text.chars().mapToObj(Character::toString).forEach(model.form()::character);
    }

    private static void noLot(BeginViewModel model) {
        Field<String> lot = field(model, "lot");
        lot.choose();
        lot.choice().choose("No lot");
    }

    private Event.Begun begun(String run) {
        return workshop.shop.open(run).state().sheet().run().begun();
    }

    private static String look(int number, String more) {
        return """
                [[step]]
                number = %d
                operation = 10
                kind = "look"
                name = "Look %d"
                what = "Right."
                %s
                """
                .formatted(number, number, more);
    }

    private static String issued(int number, String affected) {
        return """
                [[issued]]
                issue = "%d"
                reason = "Why %d"
                by = "Planner 1"
                %s
                """
                .formatted(number, number, affected);
    }

    /** A whole run of issue 1, and then a plan two issues later, of which each affects one look. */
    private Plan issuedTwiceSince() {
        String first = issued(1, "");
        Plan before = InventedPlans.inMillimetres(LOOKS + first);
        RunSession session = workshop.begin(before, "1");
        Workshop.must(() -> {
            while (session.state().asked().asQuestion().isPresent()) {
                session.answer(Answer.YES);
                session.goOn();
            }
            return session.close("Inspector 1", SignedAs.ACCEPTED);
        });
        return InventedPlans.read(InventedPlans.text(
                        "mm",
                        LOOKS + first + issued(2, "affected = [\"Look 2\"]") + issued(3, "affected = [\"Look 1\"]"))
                .replace("issue = \"1\"\nname", "issue = \"3\"\nname"));
    }

    /** A list that is empty means what the plan says. */
    @Test
    void aPartialFirstArticleBegunHereTakesWhatTheIssuesSinceItsBaselineAffect() {
        BeginViewModel model = model(issuedTwiceSince());
        type(model, "2");
        PurposeFieldsTest.<Purpose>field(model, "purpose").choice().choose(Purpose.FIRST_ARTICLE_PARTIAL);
        PurposeFieldsTest.<String>field(model, "baseline").choice().choose("T-1-A-1");
        assertEquals(
                "2 of 3 checks in this run. Hold points: 1.",
                model.askedProperty().get());
        model.form().goTo(field(model, "reason"));
        type(model, "new tool");
        model.form().goTo(field(model, "machine"));
        model.form().goOn();
        model.form().goOn();
        Occasion occasion = begun("T-1-A-2").occasion();
        assertEquals(Purpose.FIRST_ARTICLE_PARTIAL, occasion.purpose());
        assertEquals(List.of(1, 2), occasion.affected());
        assertEquals("new tool", occasion.reason());
    }

    @Test
    void howManyChecksAreInTheRunFollowsWhatItIsFor() {
        BeginViewModel model = model(InventedPlans.inMillimetres(LOOKS));
        Field<Purpose> purpose = field(model, "purpose");
        assertEquals(
                "3 of 3 checks in this run. Hold points: 1.",
                model.askedProperty().get());
        purpose.choice().choose(Purpose.FIRST_PIECE);
        assertEquals(
                "2 of 3 checks in this run. Hold points: 1.",
                model.askedProperty().get());
        purpose.choice().choose(Purpose.FIRST_ARTICLE_FULL);
        assertEquals(
                "3 of 3 checks in this run. Hold points: 1.",
                model.askedProperty().get());
    }

    /** Which of them are asked hangs on the number; a wrong count would be believed. */
    @Test
    void ofAPieceInProcessItIsToldOnceItsNumberIsSaid() {
        BeginViewModel model = model(InventedPlans.inMillimetres(LOOKS));
        PurposeFieldsTest.<Purpose>field(model, "purpose").choice().choose(Purpose.IN_PROCESS);
        String open = "Checks in the plan: 3.";
        assertEquals(open, model.askedProperty().get());
        model.form().goTo(field(model, "piece"));
        type(model, "2");
        assertEquals(
                "1 of 3 checks in this run. Hold points: 1.",
                model.askedProperty().get());
        type(model, "1");
        assertEquals(
                "2 of 3 checks in this run. Hold points: 1.",
                model.askedProperty().get());
        model.form().takeBack();
        model.form().takeBack();
        assertEquals(open, model.askedProperty().get());
    }

    @SuppressWarnings("unchecked")
    private static <T> Field<T> field(BeginViewModel model, String id) {
        return (Field<T>) model.form().fields().stream()
                .filter(field -> field.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static boolean asked(BeginViewModel model, String id) {
        return field(model, id).askedProperty().get();
    }

    /** Every check is asked then, so nothing is claimed that was not looked at. */
    @Test
    void whereNobodySaysWhatARunIsForItIsNotStatedAndAFirstArticleLeastOfAll() {
        workshop.begin(DemoPart.WINCH_BARREL_END, "003");
        BeginViewModel model = model();
        type(model, "015");
        model.form().goOn();
        noLot(model);
        model.form().goOn();
        assertTrue(begun("LG-2207-C-015").occasion().saysNothing());
    }

    @Test
    void aPurposeAsksWhatBelongsToItAndNothingElse() {
        BeginViewModel model = model();
        Field<Purpose> purpose = field(model, "purpose");
        assertFalse(asked(model, "piece") || asked(model, "baseline") || asked(model, "reason"));
        purpose.choice().choose(Purpose.IN_PROCESS);
        assertTrue(asked(model, "piece"));
        assertFalse(asked(model, "baseline") || asked(model, "reason"));
        purpose.choice().choose(Purpose.FIRST_ARTICLE_FULL);
        assertTrue(asked(model, "reason") && asked(model, "order"));
        assertFalse(asked(model, "piece") || asked(model, "baseline"));
    }

    /** Nobody comes to a field with nothing to choose in it. */
    @Test
    void whatStandsOnAnEarlierRunIsNotOfferedWhereThereIsNone() {
        Field<Purpose> purpose = field(model(), "purpose");
        assertEquals(
                List.of(),
                purpose.choice().offeredProperty().get().stream()
                        .filter(Purpose::hasBaseline)
                        .toList());
    }

    @Test
    void aPieceInProcessIsBegunByItsNumber() {
        workshop.begin(DemoPart.WINCH_BARREL_END, "003");
        BeginViewModel model = model();
        type(model, "015");
        model.form().goOn();
        noLot(model);
        PurposeFieldsTest.<Purpose>field(model, "purpose").choice().choose(Purpose.IN_PROCESS);
        model.form().goTo(field(model, "piece"));
        type(model, "0");
        model.form().goOn();
        assertEquals("Pieces are counted from 1.", workshop.told.get(0).words());
        workshop.reply("Back");
        type(model, "5");
        model.form().goOn();
        assertEquals(Occasions.inProcess(5), begun("LG-2207-C-015").occasion());
    }

    /** Another run of the part number that is open, or of which something was not read, is no ground to stand on. */
    @Test
    void aPartialFirstArticleStandsOnNoRunThatIsNotWhole() {
        workshop.setUp("014");
        BeginViewModel model = model();
        Field<Purpose> purpose = field(model, "purpose");
        assertFalse(purpose.choice().offeredProperty().get().contains(Purpose.FIRST_ARTICLE_PARTIAL));
        purpose.choice().choose(Purpose.MEASURED_AGAIN);
        assertTrue(asked(model, "baseline"));
        assertEquals(
                List.of("LG-2207-C-014"),
                field(model, "baseline").choice().offeredProperty().get());
        assertThrows(Refused.class, () -> workshop.shop
                .beginnings()
                .occasion(
                        DemoPart.SCREW_CARRIER.plan(),
                        new OccasionSaid(
                                Purpose.FIRST_ARTICLE_PARTIAL,
                                "LG-2207-C-014",
                                "new tool",
                                Optional.empty(),
                                List.of(),
                                "",
                                List.of())));
    }

    /** Another piece that is measured says nothing of this one. */
    @Test
    void onlyTheSamePieceIsMeasuredAgain() {
        workshop.setUp("014");
        Beginnings beginnings = workshop.shop.beginnings();
        OccasionSaid again = new OccasionSaid(
                Purpose.MEASURED_AGAIN, "LG-2207-C-014", "", Optional.empty(), List.of(), "", List.of());
        assertEquals(
                "begin.baseline.other-serial",
                assertThrows(Refused.class, () -> beginnings.begunFor(header("015"), again))
                        .why()
                        .key());
        assertEquals(
                Purpose.MEASURED_AGAIN,
                beginnings.begunFor(header("014"), again).occasion().purpose());
    }

    private static RunHeader header(String serial) {
        return new RunHeader(DemoPart.SCREW_CARRIER.plan(), serial, "L-1", "Lathe 4", "Setter 1");
    }
}
