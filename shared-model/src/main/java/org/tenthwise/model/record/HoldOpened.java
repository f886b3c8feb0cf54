package org.tenthwise.model.record;

import java.util.Comparator;
import java.util.List;

/**
 * A hold point that is open: how each of the steps it waits for came to be settled. As soon as one of them is settled
 * no more it is shut, and there is none of these.
 *
 * @param settled at least one, in the order the hold point names them
 */
public record HoldOpened(List<Settled> settled) {

    public HoldOpened {
        settled = List.copyOf(settled);
        if (settled.isEmpty()) {
            throw new IllegalArgumentException("A hold point waits for one step at least");
        }
    }

    /** What was settled last: it opened the hold point. */
    public Settled last() {
        return settled.stream()
                .max(Comparator.comparing(step -> step.by().seq()))
                .orElseThrow();
    }

    /** The steps before it that did not pass: somebody signed to go on. */
    public List<Settled> signedFor() {
        return settled.stream().filter(step -> step.how() != Settled.How.PASSED).toList();
    }
}
