package org.tenthwise.model.record;

import java.util.Map;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.verdict.Verdict;

/** A step that only asks: confirm, look, go / not-go. */
public record AnswerFinding(Step step, Map<Question, Answer> answers, Verdict verdict, int missing) implements Finding {

    public AnswerFinding {
        answers = Map.copyOf(answers);
    }
}
