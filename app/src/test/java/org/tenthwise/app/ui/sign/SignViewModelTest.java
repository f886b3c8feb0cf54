package org.tenthwise.app.ui.sign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Watch;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;

class SignViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunSession session;
    private SignViewModel model;

    @BeforeEach
    void aRunHalfDone() {
        session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.027");
        model = new SignViewModel(workshop.inHand(session), false, workshop.words, workshop, Workshop.CLOCK);
        model.load();
    }

    private void sign() {
        type("Inspector 1");
        model.form().goOn();
        choose(1, SignedAs.NOT_ACCEPTED);
        choose(2, SignViewModel.End.CLOSE);
    }

    @SuppressWarnings("unchecked")
    private <T> void choose(int field, T thing) {
        ((Field<T>) model.form().fields().get(field)).choice().choose(thing);
        model.form().goOn();
    }

    private void type(String text) {
        text.chars().mapToObj(Character::toString).forEach(model.form()::character);
    }

    @Test
    void itSaysBeforehandWhatTheRecordWillBeCalled() {
        // 35 steps: 9 of the set-up, of which five passed, 2 in process, 24 of the drawing, of which one is out
        assertEquals(
                "Once closed, the record says: Does not conform: 1 of 24 characteristics out; 23 "
                        + "characteristics, 4 set-up checks, 2 in-process checks not settled.",
                model.willBeValue().getValue());
        assertEquals(
                "0 of 24 characteristics passed; also 5 of 9 set-up checks, 0 of 2 in-process checks.",
                model.passedValue().getValue());
        assertEquals("Not signed.", model.signedValue().getValue());
        assertEquals(30, model.mattersValue().getValue().size());
    }

    @Test
    void whatFailedStandsBeforeWhatIsOnlyOpen() {
        List<String> numbers =
                model.mattersValue().getValue().stream().map(OpenIssue::number).toList();
        assertEquals(List.of("13", "6", "7"), numbers.subList(0, 3));
    }

    @Test
    void aScrappedPartIsCalledThat() {
        Workshop.must(() -> session.dispose(Disposition.SCRAP, "Past size", "Inspector 1", ""));
        model.load();
        assertTrue(model.willBeValue().getValue().endsWith(" Scrapped."));
    }

    @Test
    void anUnfinishedRunIsNotClosedBeforeTheWarningIsAnswered() {
        sign();
        assertEquals(Optional.empty(), session.state().sheet().run().closed());
        assertEquals("As it is, this does not conform", workshop.told.get(0).title());
        workshop.reply("Leave it open");
        assertEquals(Optional.empty(), session.state().sheet().run().closed());
        assertEquals(List.of(), workshop.asked);
    }

    @Test
    void closedAllTheSameItLeadsToTheRecord() {
        sign();
        workshop.reply("Close it anyway");
        assertEquals(
                Optional.of(new Event.Closed("Inspector 1", SignedAs.NOT_ACCEPTED)),
                session.state().sheet().run().closed());
        assertEquals(List.of("record " + session.id()), workshop.asked);
    }

    @Test
    void theSafeReplyIsTheLastOne() {
        sign();
        assertTrue(workshop.told.get(0).replies().get(1).label().startsWith("Leave"));
    }

    @Test
    void aRunClosedElsewhereIsSaid() {
        sign();
        Workshop.must(() -> session.close("Setter 1", SignedAs.MACHINED_AND_MEASURED));
        workshop.reply("Close it anyway");
        assertEquals("Not recorded", workshop.told.get(0).title());
    }

    private static <T> void tap(SignViewModel seen, int field, T thing) {
        @SuppressWarnings("unchecked")
        Field<T> tapped = (Field<T>) seen.form().fields().get(field);
        tapped.choice().choose(thing);
    }

    private SignViewModel shown(Watch clock) {
        SignViewModel shown = new SignViewModel(workshop.inHand(session), false, workshop.words, workshop, clock);
        shown.load();
        return shown;
    }

    @Test
    void threeTapsSignAndAreRefusedAsBefore() {
        SignViewModel shown = shown(new Watch());
        tap(shown, 0, "Setter 2");
        tap(shown, 1, SignedAs.NOT_ACCEPTED);
        tap(shown, 2, SignViewModel.End.CLOSE);
        assertEquals("As it is, this does not conform", workshop.told.get(0).title());
        workshop.reply("Leave it open");
        assertEquals(Optional.empty(), session.state().sheet().run().closed());
        tap(shown, 2, SignViewModel.End.CLOSE);
        workshop.reply("Close it anyway");
        assertEquals(
                Optional.of(new Event.Closed("Setter 2", SignedAs.NOT_ACCEPTED)),
                session.state().sheet().run().closed());
    }

    @Test
    void theOtherKeySignsAndKeepsItOpen() {
        SignViewModel shown = shown(new Watch());
        tap(shown, 0, "Setter 2");
        tap(shown, 1, SignedAs.NOT_ACCEPTED);
        tap(shown, 2, SignViewModel.End.LEAVE_OPEN);
        assertEquals(Optional.empty(), session.state().sheet().run().closed());
        assertEquals(List.of("record " + session.id()), workshop.asked);
    }

    /** Its answers lie in one place, and closing cannot be undone. */
    @Test
    void noSecondTapAnswersWhatHasJustCome() {
        Watch clock = Watch.held();
        SignViewModel shown = shown(clock);
        clock.pass(400);
        tap(shown, 0, "Setter 2");
        for (int bounced = 0; bounced < 4; bounced++) {
            tap(shown, 1, SignedAs.NOT_ACCEPTED);
            assertEquals("meaning", shown.form().inHandProperty().get().id());
            clock.pass(100);
        }
        tap(shown, 1, SignedAs.NOT_ACCEPTED);
        for (int bounced = 0; bounced < 4; bounced++) {
            tap(shown, 2, SignViewModel.End.CLOSE);
            clock.pass(100);
        }
        assertEquals(List.of(), workshop.told);
        tap(shown, 2, SignViewModel.End.CLOSE);
        assertEquals(1, workshop.told.size());
    }

    /** A meaning alone signs nothing where the run is closed: a signature stays. */
    @Test
    void aFurtherSignatureIsGivenByTheKeyThatSaysSo() {
        Workshop.must(() -> session.close("Inspector 1", SignedAs.NOT_ACCEPTED));
        SignViewModel shown = new SignViewModel(workshop.inHand(session), true, workshop.words, workshop, new Watch());
        shown.load();
        tap(shown, 0, "Inspector 1");
        tap(shown, 1, SignedAs.NOT_ACCEPTED);
        assertEquals(List.of(), workshop.asked);
        shown.form().goOn();
        assertEquals(List.of("record " + session.id()), workshop.asked);
    }
}
