package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.tolerance.Limits;

/**
 * What is proven by a paper: a certificate, the report of a coordinate machine, what a supplier says.
 *
 * @param what which paper, in the plan's words; may be empty where {@code where} says it
 * @param where who or what proves it: "coordinate machine", a supplier; empty where the plan does not say
 * @param limits what figures of the paper are judged against; absent where it gives none
 */
public record DocumentCheck(ProofOf proof, String what, String where, Optional<Limits> limits, Specified specified)
        implements Check {

    /** The word plans and files for programs have for one in the order of work. */
    public static final String KEY = "document";

    @Override
    public String key() {
        return proof.key();
    }

    @Override
    public List<Slot> slots() {
        return List.of();
    }

    @Override
    public Optional<Means> means() {
        return Optional.empty();
    }

    @Override
    public List<Integer> restsOn() {
        return List.of();
    }

    @Override
    public boolean isInOrder() {
        return proof.isInOrder();
    }

    @Override
    public boolean comesToASize() {
        return false;
    }

    @Override
    public Optional<Limits> judgedAgainst() {
        return limits;
    }

    @Override
    public Optional<String> judgedBy() {
        return limits.map(any -> Combine.EACH.key());
    }

    @Override
    public Optional<DocumentCheck> asDocument() {
        return Optional.of(this);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.document(this);
    }
}
