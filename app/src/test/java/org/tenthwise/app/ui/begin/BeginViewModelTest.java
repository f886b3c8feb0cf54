package org.tenthwise.app.ui.begin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.ui.Watch;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.run.SignedAs;

class BeginViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private BeginViewModel model() {
        BeginViewModel model = new BeginViewModel(
                DemoPart.SCREW_CARRIER.plan(), workshop.shop, workshop.tasks, workshop.words, workshop, Workshop.CLOCK);
        model.load();
        return model;
    }

    private static void type(BeginViewModel model, String text) {
        text.chars().mapToObj(Character::toString).forEach(model.form()::character);
    }

    @SuppressWarnings("unchecked")
    private static void noLot(BeginViewModel model) {
        Field<String> lot = (Field<String>) model.form().fields().get(1);
        lot.choose();
        lot.choice().choose("No lot");
    }

    private Event.Begun begun(String run) {
        return workshop.shop.open(run).state().sheet().run().begun();
    }

    @Test
    void aFirstRunIsBegunFromWhatIsTypedAndOneKey() {
        BeginViewModel model = model();
        for (String text : List.of("014", "AB-7731", "Lathe 4", "Setter 2")) {
            type(model, text);
            model.form().enter();
        }
        assertEquals(List.of(), workshop.asked);
        model.form().goOn();
        assertEquals(List.of("run LG-2207-C-014"), workshop.asked);
        Event.Begun begun = begun("LG-2207-C-014");
        assertEquals(List.of("014", "AB-7731", "Lathe 4"), List.of(begun.serial(), begun.lot(), begun.machine()));
    }

    @Test
    void machineAndPersonBeginWithThoseOfTheRunLastWorkedOn() {
        workshop.begin(DemoPart.WINCH_BARREL_END, "003");
        BeginViewModel model = model();
        type(model, "015");
        model.form().goOn();
        noLot(model);
        model.form().goOn();
        assertEquals(List.of("run LG-2207-C-015"), workshop.asked);
        assertEquals("Lathe 4", begun("LG-2207-C-015").machine());
        assertEquals(
                "Setter 2",
                workshop.shop.open("LG-2207-C-015").state().sheet().run().by());
    }

    @Test
    void aSerialBegunAlreadyIsSaidAndGoneOnWith() {
        workshop.setUp("014");
        BeginViewModel model = model();
        type(model, "014");
        assertEquals(
                "Serial 014 is already started and is at 6 Coolant and chips.",
                model.noticeProperty().get());
        model.form().goOn();
        noLot(model);
        model.form().goOn();
        assertEquals("Serial 014 is already started", workshop.told.get(0).title());
        workshop.reply("Continue it");
        assertEquals(List.of("run LG-2207-C-014"), workshop.asked);
        assertEquals(1, workshop.runs());
    }

    @Test
    void anotherRunOfTheSerialCanBeBegunAllTheSame() {
        workshop.setUp("014");
        BeginViewModel model = model();
        type(model, "014");
        model.form().goOn();
        noLot(model);
        model.form().goOn();
        workshop.reply("Start another run");
        assertEquals(List.of("run LG-2207-C-014-2"), workshop.asked);
    }

    @Test
    void theLotIsNotPassedByInSilence() {
        workshop.setUp("013");
        BeginViewModel model = model();
        type(model, "014");
        model.form().goOn();
        assertFalse(model.form().readyProperty().get());
        model.form().goOn();
        assertEquals(List.of(), workshop.asked);
        noLot(model);
        model.form().goOn();
        assertTrue(begun("LG-2207-C-014").noLot());
        assertEquals("", begun("LG-2207-C-014").lot());
    }

    @Test
    void aPlanThatReadsOtherwiseUnderTheSameIssueIsBegunOnlyOnPurpose() {
        workshop.setUp("013");
        Plan changed = InventedPlans.read(DemoPart.SCREW_CARRIER.planText() + "\n# changed\n");
        BeginViewModel model =
                new BeginViewModel(changed, workshop.shop, workshop.tasks, workshop.words, workshop, Workshop.CLOCK);
        model.load();
        type(model, "014");
        model.form().goOn();
        noLot(model);
        model.form().goOn();
        assertTrue(workshop.told
                .get(0)
                .words()
                .startsWith("Run LG-2207-C-013 was started with another text of LG-2207 rev C, issue 9."));
        workshop.reply("Do not start");
        assertEquals(List.of(), workshop.asked);
        model.form().goOn();
        workshop.reply("Start with this text");
        assertEquals(List.of("run LG-2207-C-014"), workshop.asked);
    }

    @Test
    void aClosedRunOfTheSerialIsNoneBegun() {
        Workshop.must(() -> workshop.setUp("014").close("Inspector 1", SignedAs.NOT_ACCEPTED));
        BeginViewModel model = model();
        type(model, "014");
        assertEquals("", model.noticeProperty().get());
    }

    private BeginViewModel seen(Watch clock) {
        BeginViewModel model = new BeginViewModel(
                DemoPart.SCREW_CARRIER.plan(), workshop.shop, workshop.tasks, workshop.words, workshop, clock);
        model.load();
        return model;
    }

    @SuppressWarnings("unchecked")
    private static Field<String> field(BeginViewModel model, int field) {
        return (Field<String>) model.form().fields().get(field);
    }

    private static List<String> ready(BeginViewModel model) {
        return field(model, 0).choice().offeredProperty().get();
    }

    @Test
    void theNextPartIsBegunByOneTapOnWhatItsKeySays() {
        workshop.setUp("013");
        BeginViewModel model = seen(new Watch());
        assertEquals("Start 014\nLot AB-7731", field(model, 0).reads("014"));
        field(model, 0).choice().choose("014");
        assertEquals(List.of("run LG-2207-C-014"), workshop.asked);
        Event.Begun begun = begun("LG-2207-C-014");
        assertEquals(List.of("014", "AB-7731", "Lathe 4"), List.of(begun.serial(), begun.lot(), begun.machine()));
    }

    /** The tap that opened the form was perhaps two. */
    @Test
    void aSecondTapDoesNotBeginIt() {
        workshop.setUp("013");
        Watch clock = Watch.held();
        BeginViewModel model = seen(clock);
        clock.pass(399);
        field(model, 0).choice().choose("014");
        assertEquals(List.of(), workshop.asked);
        clock.pass(1);
        field(model, 0).choice().choose("014");
        assertEquals(List.of("run LG-2207-C-014"), workshop.asked);
    }

    @Test
    void aSerialThatHasARunIsNotOffered() {
        workshop.setUp("014");
        workshop.setUp("013");
        assertEquals(List.of(), ready(seen(new Watch())));
    }

    @Test
    void aRunPutAwayIsNoPartThatAnotherFollowsOn() {
        workshop.setUp("013");
        Workshop.must(() -> workshop.setUp("120").shelf().putAway("Setter 2", "Wrong serial"));
        assertEquals(List.of("014"), ready(seen(new Watch())));
    }

    @Test
    void theSerialOfAnotherPartIsNotCountedOn() {
        workshop.begin(DemoPart.WINCH_BARREL_END, "003");
        assertEquals(List.of(), ready(seen(new Watch())));
    }

    @Test
    void anotherSerialIsTypedInstead() {
        workshop.setUp("013");
        BeginViewModel model = seen(new Watch());
        field(model, 0).type();
        type(model, "021");
        model.form().goOn();
        assertFalse(model.form().readyProperty().get());
        field(model, 1).choice().choose("AB-7731");
        assertEquals(List.of(), workshop.asked);
        model.form().goOn();
        assertEquals(List.of("run LG-2207-C-021"), workshop.asked);
    }

    private static void choose(BeginViewModel model, String id, Object what) {
        model.form().fields().stream().filter(field -> field.id().equals(id)).forEach(field -> chosen(field, what));
    }

    @SuppressWarnings("unchecked")
    private static <T> void chosen(Field<T> field, Object what) {
        field.choice().choose((T) what);
    }

    /** The next serial would be refused there, or begin a run of a part that nobody has in hand. */
    @Test
    void ofWhatIsMeasuredAgainTheSamePartLiesReadyAndNoOther() {
        Workshop.must(() -> workshop.setUp("013").close("Inspector 1", SignedAs.NOT_ACCEPTED));
        workshop.setUp("014");
        BeginViewModel model = seen(new Watch());
        assertEquals(List.of("015"), ready(model));
        choose(model, "purpose", Purpose.MEASURED_AGAIN);
        assertEquals(List.of(), ready(model));
        choose(model, "baseline", "LG-2207-C-013");
        assertEquals(List.of("013"), ready(model));
        assertEquals("Start 013\nLot AB-7731", field(model, 0).reads("013"));
        choose(model, "purpose", Purpose.NOT_STATED);
        assertEquals(List.of("015"), ready(model));
        choose(model, "purpose", Purpose.MEASURED_AGAIN);
        choose(model, "baseline", "LG-2207-C-013");
        field(model, 0).choice().choose("013");
        assertEquals(List.of("run LG-2207-C-013-2"), workshop.asked);
    }

    @Test
    void aGaugeThatSendsItsFigureBeginsNothing() {
        workshop.setUp("013");
        BeginViewModel model = seen(new Watch());
        type(model, "29.992");
        model.form().enter();
        model.form().enter();
        assertEquals(List.of(), workshop.asked);
    }
}
