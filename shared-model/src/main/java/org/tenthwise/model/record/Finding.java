package org.tenthwise.model.record;

import java.util.Optional;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.verdict.Verdict;

/** What one pass of one step comes to. */
public sealed interface Finding permits AnswerFinding, RunOutFinding, SizeFinding, PlugFinding, WiresFinding {

    Step step();

    Verdict verdict();

    /** Readings, temperatures and answers still to come in this pass. */
    int missing();

    /**
     * The verdict on one of the readings that count by itself; absent where a check judges several of them together.
     *
     * @param measured one of those behind the finding
     */
    default Optional<Verdict> alone(Measured measured) {
        return Optional.empty();
    }

    /** What may be cut next; absent where nothing may, or nobody can tell yet, and for what is not a size. */
    default Optional<Proposal> proposal() {
        return Optional.empty();
    }

    /** The same with another proposal; as it is where there can be none. */
    default Finding proposing(Optional<Proposal> proposed) {
        return this;
    }

    /** What heat means to it; absent where the plan says nothing of heat, and for what it does not touch. */
    default Optional<TemperatureEffect> warmth() {
        return Optional.empty();
    }
}
