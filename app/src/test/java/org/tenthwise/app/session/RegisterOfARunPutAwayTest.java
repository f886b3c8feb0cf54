package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;

/**
 * A register that was put right while a run lay put away counts in it too once it is taken up: its next cut would be
 * twice what it should be.
 */
class RegisterOfARunPutAwayTest extends RunBegun {

    private static final Plan SLOT = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "width"
            name = "Slot"
            method = "In the middle."
            lower = 12.000
            upper = 12.043
            places = ["middle"]
            gauge_kind = "inside-micrometer"
            gauge = "IM-1"
            """);

    private Runs shop;

    RegisterOfARunPutAwayTest() {
        super(SLOT);
    }

    @BeforeEach
    void awayWithTheRegisterOnTheRadius() throws Exception {
        shop = new Runs(ledger, Clock.systemUTC());
        session = onTheLathe();
        taken(session.machine(Register.RADIUS, Aim.ByLimits.THIRD));
        taken(session.shelf().putAway("Setter 3", "Started by mistake"));
    }

    private RunSession onTheLathe() throws Exception {
        return shop.begin(new RunHeader(SLOT, "1", "", "Lathe 4", "Setter 2"));
    }

    private Optional<Register> takenUp() throws Exception {
        RunSession again = shop.open(session.id());
        taken(again.shelf().takeUp());
        assertEquals(
                again.state().sheet().run().register(),
                shop.open(session.id()).state().sheet().run().register());
        return again.state().sheet().run().register();
    }

    @Test
    void putRightUnderSettingsItCountsThere() throws Exception {
        shop.tellMachine(new ShopEvent.MachineKnown("Lathe 4", Register.DIAMETER, Aim.ByLimits.MIDDLE), "Setter 3");
        assertEquals(Optional.of(Register.DIAMETER), takenUp());
        assertEquals(
                Optional.of(Aim.ByLimits.THIRD),
                shop.open(session.id()).state().sheet().run().usualAim());
    }

    @Test
    void putRightInAnotherRunItCountsThere() throws Exception {
        taken(onTheLathe().machine(Register.DIAMETER, Aim.ByLimits.MIDDLE));
        assertEquals(Optional.of(Register.DIAMETER), takenUp());
    }

    @Test
    void whereNothingWasPutRightNothingMoreIsKept() throws Exception {
        int before = ledger.entries(session.id()).size();
        assertEquals(Optional.of(Register.RADIUS), takenUp());
        assertEquals(
                List.of(new Event.TakenUp()),
                ledger.entries(session.id()).stream()
                        .skip(before)
                        .map(Entry::event)
                        .toList());
    }
}
