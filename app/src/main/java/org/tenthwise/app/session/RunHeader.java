package org.tenthwise.app.session;

import java.util.stream.Stream;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Signs;
import org.tenthwise.model.run.Occasion;

/**
 * What is asked before a run begins. {@code serial} and {@code by} are not blank; {@code machine} may be, and
 * {@code lot} where the plan does not ask for it or none was chosen on purpose.
 *
 * @param noLot whether it was said that there is no lot
 * @param occasion what it is begun for; steps it says are affected are of {@code plan}
 */
public record RunHeader(
        Plan plan, String serial, String lot, String machine, String by, boolean noLot, Occasion occasion) {

    public RunHeader {
        serial = serial.strip();
        lot = lot.strip();
        machine = machine.strip();
        by = by.strip();
        if (serial.isEmpty() || by.isEmpty()) {
            throw new IllegalArgumentException("A run needs a serial and a person");
        }
        if (plan.lotAsked() && lot.isEmpty() && !noLot) {
            throw new IllegalArgumentException("The plan asks for the material lot");
        }
        occasion.affected().forEach(plan::step);
        Stream.concat(
                        Stream.of(serial, lot, machine, by, occasion.reason(), occasion.order()),
                        occasion.changes().stream())
                .map(Signs::hiddenIn)
                .flatMap(hidden -> hidden.stream())
                .findFirst()
                .ifPresent(sign -> {
                    throw new IllegalArgumentException("A sign that nobody sees stands in a name: " + sign);
                });
    }

    public RunHeader(Plan plan, String serial, String lot, String machine, String by) {
        this(plan, serial, lot, machine, by, false);
    }

    /** Of which nobody says what it is for. */
    public RunHeader(Plan plan, String serial, String lot, String machine, String by, boolean noLot) {
        this(plan, serial, lot, machine, by, noLot, Occasion.NOT_STATED);
    }

    /** The same, begun for something. */
    public RunHeader begunFor(Occasion purpose) {
        return new RunHeader(plan, serial, lot, machine, by, noLot, purpose);
    }
}
