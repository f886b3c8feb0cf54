package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.verdict.Verdict;

/**
 * What a paper proves of a step.
 *
 * @param giving the paper that counts; absent while there is none
 * @param decidingFigure its figure that lies nearest to a limit or farthest beyond one; absent where none was judged
 * @param missing one while no paper settles it, or the figures that are still to come
 */
public record DocumentFinding(
        Step step,
        DocumentCheck check,
        Optional<Pass.Giving> giving,
        Optional<Written> decidingFigure,
        Verdict verdict,
        int missing)
        implements Finding {

    /** The paper alone. */
    public Optional<Document> document() {
        return giving.map(Pass.Giving::document);
    }

    @Override
    public List<Measured> measured() {
        return List.of();
    }

    @Override
    public Optional<Length> value() {
        return decidingFigure.map(Written::length);
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
    public <R> R match(Cases<R> cases) {
        return cases.document(this);
    }
}
