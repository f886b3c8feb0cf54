package org.tenthwise.model.record;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Judge;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * What a paper proves. It passes where it says that the step conforms and no figure of it lies outside, or where it
 * gives a figure for every instance and all lie inside; a figure on a limit is inside. Without a number, dated later
 * than it was entered, with figures missing or of another kind than the limits, it proves nothing.
 */
final class DocumentAssessment {

    private final Step step;
    private final DocumentCheck check;

    private DocumentAssessment(Step step, DocumentCheck check) {
        this.step = step;
        this.check = check;
    }

    static DocumentFinding of(Step step, DocumentCheck check, Pass pass) {
        Optional<Pass.Giving> giving = pass.giving();
        return giving.map(given -> new DocumentAssessment(step, check).of(given))
                .orElseGet(() -> new DocumentFinding(
                        step, check, Optional.empty(), Optional.empty(), Verdict.plain(VerdictKind.OPEN), 1));
    }

    private DocumentFinding of(Pass.Giving given) {
        Document document = given.document();
        Optional<Judged> worst = worst(document.figures());
        boolean settles = document.says() != Document.Says.NOT_YET
                && !document.number().isBlank()
                && !document.isDatedAfter(given.entry().at())
                && areOfItsKind(document.figures());
        int missing = settles ? missing(document) : 1;
        boolean out = worst.filter(judged -> !judged.verdict().passed()).isPresent();
        if (settles && (document.says() == Document.Says.DOES_NOT_CONFORM || out)) {
            Verdict verdict = out ? worst.get().verdict() : Verdict.plain(VerdictKind.FAIL);
            return found(given, worst, verdict, 0);
        }
        return missing > 0
                ? found(given, worst, Verdict.plain(VerdictKind.OPEN), missing)
                : found(given, worst, worst.map(Judged::verdict).orElse(Verdict.plain(VerdictKind.PASS)), 0);
    }

    private DocumentFinding found(Pass.Giving given, Optional<Judged> worst, Verdict verdict, int missing) {
        return new DocumentFinding(step, check, Optional.of(given), worst.map(Judged::figure), verdict, missing);
    }

    /** Figures alone need limits to be judged against; where there are any, there is one for every instance. */
    private int missing(Document document) {
        int given = document.figures().size();
        if (document.says() == Document.Says.FIGURES && check.limits().isEmpty()) {
            return 1;
        }
        return given == 0 ? 0 : Math.abs(step.drawing().instances().lookedAfter() - given);
    }

    private boolean areOfItsKind(List<Written> figures) {
        return check.limits()
                .map(limits -> figures.stream()
                        .allMatch(
                                figure -> figure.unit().kind() == limits.unit().kind()))
                .orElse(true);
    }

    private record Judged(Written figure, Verdict verdict) {

        /** Inside by so much, or out by so much less than nothing. */
        Length room() {
            Verdict.Margin margin = verdict.margin().orElseThrow();
            return margin.inside() ? margin.distance() : margin.distance().negated();
        }
    }

    /** The figure that decides; none where they cannot be judged. */
    private Optional<Judged> worst(List<Written> figures) {
        if (!areOfItsKind(figures)) {
            return Optional.empty();
        }
        return check.limits().map(limits -> judge(limits)).flatMap(judge -> figures.stream()
                .map(figure -> new Judged(figure, judge.of(figure.length())))
                .min(Comparator.comparing(Judged::room)));
    }

    private static Judge judge(Limits limits) {
        return new Judge(limits, Length.of("0", limits.unit()), Optional.empty());
    }
}
