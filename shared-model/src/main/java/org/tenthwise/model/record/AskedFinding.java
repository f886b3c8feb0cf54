package org.tenthwise.model.record;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/** A step that only asks: confirm, look, go / not-go. */
public record AskedFinding(Step step, AskedCheck check, Map<Question, Answer> answers, Verdict verdict, int missing)
        implements Finding {

    public AskedFinding {
        answers = Map.copyOf(answers);
    }

    @Override
    public List<Measured> measured() {
        return List.of();
    }

    @Override
    public Optional<Length> value() {
        return Optional.empty();
    }

    @Override
    public boolean isOfOneSize() {
        return false;
    }

    @Override
    public List<Measured> farOff() {
        return List.of();
    }

    @Override
    public boolean awaitsAnother() {
        return false;
    }

    @Override
    public boolean provenByAnotherTry() {
        return verdict.standing() != VerdictKind.UNPROVEN;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.asked(this);
    }
}
