package org.tenthwise.app.text;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.plan.IssueOfPlan;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Words;

/** Why a plan was issued, who answers for it, and what its first article takes in, in words. */
public final class IssueWords {

    private final Words words;

    public IssueWords(Words words) {
        this.words = words;
    }

    /** Of the issue in force, a line each; none where the plan does not tell it. */
    public List<String> lines(Plan plan) {
        return plan.issued()
                .map(issue -> List.of(
                        words.say("issued.why", issue.number(), issue.reason()), names(issue), firstArticle(issue)))
                .orElse(List.of());
    }

    private String names(IssueOfPlan issue) {
        return words.list(Stream.of(
                        Optional.of(words.say("issued.by", issue.by())),
                        issue.approvedBy().map(second -> words.say("issued.approved", second)),
                        issue.on().map(LocalDate::toString))
                .flatMap(Optional::stream)
                .toList());
    }

    /** What was confirmed counts from the issue right before it only. */
    private String firstArticle(IssueOfPlan issue) {
        return issue.affected()
                .map(affected -> affected.isEmpty() ? words.say("issued.none") : words.say("issued.partial", affected))
                .orElseGet(() -> words.say("issued.full"));
    }
}
