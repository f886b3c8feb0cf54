package org.tenthwise.app.firstarticle;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.tenthwise.app.text.Figures;
import org.tenthwise.model.callout.CalloutKind;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.firstarticle.FirstArticle;
import org.tenthwise.model.firstarticle.ReportLine;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Words;

/**
 * What stands in the column of tooling: of a limit gauge what is marked on it, else the size or the thread it is of; of
 * one that the drawing asks for in words, a gauge made for the part, its number. Nothing where there is a figure.
 */
final class ToolingText {

    private static final Set<CalloutKind> WORDS = Set.of(CalloutKind.NOTE, CalloutKind.PROCESS);
    private static final Pattern COUNT = Pattern.compile("^\\d+ ?[xX×] ");

    private final FirstArticle article;
    private final Words words;
    private final ResultText results;

    ToolingText(FirstArticle article, Words words) {
        this.article = article;
        this.words = words;
        this.results = new ResultText(words);
    }

    String of(ReportLine one) {
        boolean attribute = one.results().stream().anyMatch(results::isAttribute);
        return one.step()
                .filter(step -> attribute && step.check().questions().stream().anyMatch(Question::byLimitGauge))
                .map(step -> of(one, step))
                .orElse("");
    }

    private String of(ReportLine one, Step step) {
        return step.check()
                .certifiedEnds()
                .map(ends ->
                        words.say("report.tooling.ends", Figures.withUnit(ends.go()), Figures.withUnit(ends.notGo())))
                .or(() -> size(one).map(size -> words.say("report.tooling.size", size)))
                .orElseGet(() -> number(one));
    }

    /** The size or the thread, without how many there are of it; absent where the drawing has words. */
    private Optional<String> size(ReportLine one) {
        String drawn = one.drawing().requirement();
        try {
            boolean inWords = new CalloutReader(article.plan().unit(), Optional.empty())
                    .read(drawn).parts().stream().allMatch(part -> WORDS.contains(part.kind()));
            return inWords ? Optional.empty() : Optional.of(COUNT.matcher(drawn).replaceFirst(""));
        } catch (Refused notACallout) {
            return Optional.empty();
        }
    }

    private String number(ReportLine one) {
        String marks = one.results().stream()
                .map(result -> new Behind(article, result).gauges())
                .filter(mark -> !mark.isEmpty())
                .distinct()
                .collect(Collectors.joining(" "));
        return marks.isEmpty() ? "" : words.say("report.tooling.number", marks);
    }
}
