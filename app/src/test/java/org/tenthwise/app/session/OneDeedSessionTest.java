package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.sqlite.Sample;

/** What is done with one key is kept whole or not at all. */
class OneDeedSessionTest extends RunBegun {

    OneDeedSessionTest() {
        super(InventedPlans.ROOT_THEN_WIRES);
    }

    @Test
    void aGaugeIsNotSetByAReadingThatIsNotKept() throws Exception {
        Sample.behindItsBack(
                store(),
                "CREATE TRIGGER full BEFORE INSERT ON ledger WHEN NEW.kind = 'reading-taken' "
                        + "BEGIN SELECT RAISE(ABORT, 'no room'); END");
        assertThrows(CouldNotSave.class, () -> session.enter("17.01"));
        assertEquals(List.of("begun"), kinds());
        assertTrue(session.state().setting().isEmpty());

        Sample.behindItsBack(store(), "DROP TRIGGER full");
        taken(session.enter("17.01"));
        assertEquals(List.of("begun", "gauge-set", "reading-taken"), kinds());
    }

    private List<String> kinds() {
        return ledger.stored(session.id()).stream().map(StoredEntry::kind).toList();
    }
}
