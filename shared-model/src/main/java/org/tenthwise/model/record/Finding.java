package org.tenthwise.model.record;

import org.tenthwise.model.plan.Step;
import org.tenthwise.model.verdict.Verdict;

/** What one pass of one step comes to. */
public sealed interface Finding
        permits AnswerFinding, RunOutFinding, SizeFinding, PlugFinding, WiresFinding {

    Step step();

    Verdict verdict();

    /** Readings and answers still to come in this pass. */
    int missing();
}
