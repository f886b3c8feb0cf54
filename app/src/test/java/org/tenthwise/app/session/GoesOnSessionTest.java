package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.DemoPlans;
import org.tenthwise.app.kept.KeptSteps;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.plan.Answer;

/** At which step a run goes on after the client was taken away in the middle of it. */
class GoesOnSessionTest {

    @TempDir
    private Path dir;

    private Ledger ledger;
    private RunSession session;

    @BeforeEach
    void inTheFirstOperation() throws Exception {
        ledger = new SqliteStores().open(dir.resolve("s.db"));
        session = shop().begin(new RunHeader(DemoPlans.outsideAsRead(), "014", "AB-7731", "Lathe 4", "Setter 2"));
        session.answers().give(1, Answer.YES);
    }

    @AfterEach
    void letGo() {
        ledger.close();
    }

    private Runs shop() {
        return new Runs(
                ledger,
                Clock.systemUTC(),
                ShopBook.inMemory(ShopBook.Shop.NEW),
                new KeptSteps(dir.resolve(KeptSteps.FILE)));
    }

    private int afterAKill() {
        return shop().open(session.id()).state().inHand().number();
    }

    @Test
    void atTheStepThatWasInHandThoughNothingWasDoneThere() {
        session.goTo(3);
        assertEquals(3, afterAKill());
        session.goTo(5);
        session.goTo(2);
        assertEquals(2, afterAKill());
    }

    @Test
    void atTheStepAnAnswerLedTo() throws Exception {
        assertEquals(2, afterAKill());
        session.answers().give(2, Answer.YES);
        assertEquals(3, afterAKill());
    }

    /** What was in hand is done: the step of the last thing done has the word, or what follows it. */
    @Test
    void notAtAStepThatHasPassed() throws Exception {
        session.answers().give(2, Answer.YES);
        session.answers().give(3, Answer.YES);
        session.goTo(2);
        assertEquals(4, afterAKill());
    }

    @Test
    void notAtAStepThatIsHeld() {
        session.goTo(9);
        assertEquals(2, afterAKill());
    }

    @Test
    void whereNothingIsKeptTheEntriesTell() {
        session.goTo(5);
        assertEquals(
                2,
                new Runs(ledger, Clock.systemUTC())
                        .open(session.id())
                        .state()
                        .inHand()
                        .number());
    }
}
