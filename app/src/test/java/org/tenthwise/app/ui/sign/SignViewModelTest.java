package org.tenthwise.app.ui.sign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;

class SignViewModelTest {

    @TempDir
    private Path folder;
    private Workshop workshop;
    private RunSession session;
    private SignViewModel model;

    @BeforeEach
    void aRunHalfDone() {
        workshop = new Workshop(folder);
        session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.027");
        model = new SignViewModel(workshop.inHand(session), workshop.words, workshop, Workshop.CLOCK);
        model.load();
    }

    @AfterEach
    void shut() {
        workshop.close();
    }

    private void sign() {
        type("Inspector 1");
        model.form().goOn();
        type("not released");
        model.form().goOn();
    }

    private void type(String text) {
        text.chars().mapToObj(Character::toString).forEach(model.form()::character);
    }

    @Test
    void itSaysBeforehandWhatTheRecordWillBeCalled() {
        // 24 characteristics, of which the five of the set-up passed
        assertEquals("The record will say: Not released. 19 characteristics neither passed nor are conceded.", model.willBeValue().getValue());
        assertEquals("5 of 24 characteristics passed.", model.passedValue().getValue());
        assertEquals(19, model.mattersValue().getValue().size());
    }

    @Test
    void whatFailedStandsBeforeWhatIsOnlyOpen() {
        List<String> numbers = model.mattersValue().getValue().stream().map(Matter::number).toList();
        assertEquals(List.of("13", "6", "7"), numbers.subList(0, 3));
    }

    @Test
    void aScrappedPartIsCalledThat() {
        Workshop.must(() -> session.dispose(Disposition.SCRAP, "Past size", "Inspector 1"));
        model.load();
        assertEquals("The record will say: Scrapped.", model.willBeValue().getValue());
    }

    @Test
    void anUnfinishedRunIsNotClosedBeforeTheWarningIsAnswered() {
        sign();
        assertEquals(Optional.empty(), session.state().sheet().run().closed());
        assertEquals("Not every characteristic passed", workshop.told().get(0).title());
        workshop.reply("Leave it open");
        assertEquals(Optional.empty(), session.state().sheet().run().closed());
        assertEquals(List.of(), workshop.went());
    }

    @Test
    void closedAllTheSameItLeadsToTheRecord() {
        sign();
        workshop.reply("Close it all the same");
        assertEquals(Optional.of(new Event.Closed("Inspector 1", "not released")), session.state().sheet().run().closed());
        assertEquals(List.of("record " + session.id()), workshop.went());
    }

    @Test
    void theSafeReplyIsTheLastOne() {
        sign();
        assertTrue(workshop.told().get(0).replies().get(1).label().startsWith("Leave"));
    }

    @Test
    void aRunClosedElsewhereIsSaid() {
        sign();
        Workshop.must(() -> session.close("Setter 1", "made and measured"));
        workshop.reply("Close it all the same");
        assertEquals("Not taken", workshop.told().get(0).title());
    }
}
