package org.tenthwise.model.record;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * What answers come to. The first answer of a question is the right one; one wrong answer fails the check, and right
 * ones pass it only where passing proves it.
 */
final class AskedAssessment {

    private AskedAssessment() {}

    static AskedFinding of(Step step, AskedCheck check, Pass pass) {
        Map<Question, Answer> answers = new LinkedHashMap<>();
        boolean wrong = false;
        for (Question question : check.questions()) {
            Optional<Answer> answer = pass.answer(question);
            answer.ifPresent(given -> answers.put(question, given));
            wrong |= answer.isPresent() && answer.get() != question.answers().get(0);
        }
        int missing = check.questions().size() - answers.size();
        VerdictKind right = check.isProvenByPassing() ? VerdictKind.PASS : VerdictKind.UNPROVEN;
        VerdictKind standing = wrong ? VerdictKind.FAIL : missing > 0 ? VerdictKind.OPEN : right;
        return new AskedFinding(step, check, answers, Verdict.plain(standing), missing);
    }
}
