package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.sqlite.Sample;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.run.StepEvent;

/** A run that a newer release went on with can be looked at, and the others of the store gone on with. */
class NewerRunSessionTest extends RunBegun {

    NewerRunSessionTest() {
        super(InventedPlans.ROOT_THEN_WIRES);
    }

    @Test
    void nothingIsTakenInItAndAnotherRunIsBegunAndWorked() throws Exception {
        String newer = session.id();
        ledger.close();
        Sample.photograph(store(), newer);
        ledger = new SqliteStores().open(store());
        Runs runs = new Runs(ledger, Clock.systemUTC());
        session = runs.open(newer);

        assertInstanceOf(Prompt.Closed.class, session.state().asked());
        assertEquals(Objection.Kind.NEWER, refused(session.enter("17.01")));
        assertEquals(Objection.Kind.NEWER, refused(session.again(StepEvent.PassBegun.Why.MEASURED_AGAIN)));
        assertThrows(CouldNotSave.class, () -> session.note("seen"));
        assertEquals(2, ledger.stored(newer).size());

        session = runs.begin(new RunHeader(InventedPlans.ROOT_THEN_WIRES, "2", "", "", "Setter 2"));
        enter("17.01");
    }
}
