package org.tenthwise.app.session;

import org.tenthwise.model.plan.Plan;

/** What is asked before a run begins; {@code serial} and {@code by} are not blank, the other two may be. */
public record Beginning(Plan plan, String serial, String lot, String machine, String by) {

    public Beginning {
        serial = serial.strip();
        lot = lot.strip();
        machine = machine.strip();
        by = by.strip();
        if (serial.isEmpty() || by.isEmpty()) {
            throw new IllegalArgumentException("A run needs a serial and a person");
        }
    }
}
