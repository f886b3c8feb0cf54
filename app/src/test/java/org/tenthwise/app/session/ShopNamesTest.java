package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.store.MemoryLedger;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.ShopEvent;

class ShopNamesTest {

    private final MemoryLedger ledger = new MemoryLedger();
    private final ShopBook book = ShopBook.inMemory(ShopBook.Shop.NEW);
    private final Runs runs = new Runs(ledger, Clock.systemUTC(), book, StepsInHand.inMemory());

    private RunSession begin(String machine) throws Exception {
        return runs.begin(new RunHeader(DemoPart.SCREW_CARRIER.plan(), "1", "L-1", machine, "Setter 1"));
    }

    @Test
    void whatWasNamedIsOfferedBehindWhatTheRunsHave() throws Exception {
        runs.names().add(ShopNames.Kind.MACHINE, "Lathe 7");
        runs.names().add(ShopNames.Kind.PERSON, "Inspector 1");
        runs.names().add(ShopNames.Kind.PERSON, "Setter 1");
        begin("Lathe 4");
        assertEquals(List.of("Lathe 4", "Lathe 7"), runs.names().machines());
        assertEquals(List.of("Setter 1", "Inspector 1"), runs.names().people());
        assertEquals(
                List.of(true, false),
                runs.names().all(ShopNames.Kind.MACHINE).stream()
                        .map(ShopNames.Name::used)
                        .toList());
    }

    @Test
    void theFirstPagesAreForAShopWithoutRunsThatHasNotLeftThem() throws Exception {
        assertTrue(runs.names().isNew());
        runs.names().begun();
        assertFalse(runs.names().isNew());
        book.keep(ShopBook.Shop.NEW);
        begin("Lathe 4");
        assertFalse(runs.names().isNew());
    }

    @Test
    void leavingTheFirstPagesKeepsTheNames() {
        runs.names().add(ShopNames.Kind.MACHINE, "Lathe 7");
        runs.names().begun();
        assertEquals(List.of("Lathe 7"), runs.names().machines());
    }

    @Test
    void aRegisterToldForTheShopIsPutRightInTheOpenRunsThatHaveItTheOtherWayRound() throws Exception {
        RunSession session = begin("Lathe 4");
        session.machine(Register.DIAMETER, Aim.ByLimits.THIRD);
        ShopEvent.MachineKnown known = new ShopEvent.MachineKnown("Lathe 4", Register.RADIUS, Aim.ByLimits.MIDDLE);
        runs.tellMachine(known, "Setter 2");
        assertEquals(
                Optional.of(new ShopEvent.MachineKnown("Lathe 4", Register.RADIUS, Aim.ByLimits.THIRD)),
                runs.sheet(session.id()).run().machineKnown());
        assertEquals(
                Optional.of(known),
                runs.names().all(ShopNames.Kind.MACHINE).get(0).known());
        long before = ledger.head().seq();
        runs.tellMachine(known, "Setter 2");
        assertEquals(before, ledger.head().seq(), "what is known already is kept once");
    }
}
