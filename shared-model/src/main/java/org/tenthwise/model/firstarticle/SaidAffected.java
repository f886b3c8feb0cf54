package org.tenthwise.model.firstarticle;

import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import org.tenthwise.model.plan.AffectedSince;
import org.tenthwise.model.plan.IssueOfPlan;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.run.ReportAsked;

/**
 * What is stated to be affected, against what a partial report is on: by every issue of a plan since the baseline, and
 * by what its runs were begun for. A full report is on everything.
 */
final class SaidAffected {

    private final List<Sheet> runs;
    private final Optional<Plan> baseline;
    private final BiPredicate<Plan, Step> takenIn;

    /**
     * @param baseline the plan the baseline was made to; where that is not known, every issue there is counts as later
     * @param takenIn which steps the report is on
     */
    SaidAffected(ReportAsked asked, List<Sheet> runs, Optional<Plan> baseline, BiPredicate<Plan, Step> takenIn) {
        this.runs = asked.isPartial() ? runs : List.of();
        this.baseline = baseline;
        this.takenIn = takenIn;
    }

    /** What is stated and the report is not on, by balloon or by name, each once. */
    List<String> leftOut() {
        return runs.stream()
                .flatMap(sheet -> Stream.concat(byIssues(sheet), byPurpose(sheet))
                        .map(step -> FirstArticle.called(sheet.plan(), step)))
                .distinct()
                .toList();
    }

    /** Numbers of the issues since the baseline of which nobody said what they affect, each once; never the first. */
    List<String> unsaid() {
        return runs.stream()
                .flatMap(sheet -> since(sheet).unsaid().stream()
                        .filter(issue -> !issue.equals(sheet.plan().issues().get(0))))
                .map(IssueOfPlan::number)
                .distinct()
                .toList();
    }

    private AffectedSince since(Sheet sheet) {
        return baseline.map(before -> AffectedSince.of(before, sheet.plan()))
                .orElseGet(() -> AffectedSince.everIn(sheet.plan()));
    }

    private Stream<Step> byIssues(Sheet sheet) {
        return since(sheet)
                .leftOut(sheet.plan().steps().stream()
                        .filter(step -> takenIn.test(sheet.plan(), step))
                        .map(Step::number)
                        .toList())
                .stream();
    }

    private Stream<Step> byPurpose(Sheet sheet) {
        Occasion occasion = sheet.run().begun().occasion();
        return occasion.purpose() == Purpose.FIRST_ARTICLE_PARTIAL
                ? occasion.affected().stream().map(sheet.plan()::step).filter(step -> !takenIn.test(sheet.plan(), step))
                : Stream.empty();
    }
}
