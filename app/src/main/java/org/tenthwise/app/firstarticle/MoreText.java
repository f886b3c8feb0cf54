package org.tenthwise.app.firstarticle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tenthwise.app.text.DocumentWords;
import org.tenthwise.app.text.DrawingWords;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.firstarticle.CellStanding;
import org.tenthwise.model.firstarticle.FirstArticle;
import org.tenthwise.model.firstarticle.FoundInRun;
import org.tenthwise.model.firstarticle.ReportLine;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** What stands in the column of additional data: which of several alike, how a figure came about, what was decided. */
final class MoreText {

    private final FirstArticle article;
    private final Words words;
    private final ResultText results;

    MoreText(FirstArticle article, Words words) {
        this.article = article;
        this.words = words;
        this.results = new ResultText(words);
    }

    /** The same of all runs once; what differs with the run it is of before it. */
    String of(ReportLine one) {
        List<String> said = one.results().stream().map(this::of).distinct().toList();
        if (said.size() == 1) {
            return said.get(0);
        }
        return one.results().stream()
                .filter(result -> !of(result).isEmpty())
                .map(result -> words.say("report.more.of", article.column(result.column()), of(result)))
                .collect(Collectors.joining("; "));
    }

    private String of(FoundInRun result) {
        List<String> said = new ArrayList<>();
        result.checked()
                .ifPresentOrElse(
                        checked -> {
                            which(result, checked).forEach(said::add);
                            made(result, checked, said);
                            new Behind(article, result)
                                    .pastDue()
                                    .forEach(used -> said.add(words.say(
                                            "report.more.past-due",
                                            used.what().mark(),
                                            used.calibration().due().orElseThrow())));
                            document(checked.line(), said);
                        },
                        () -> said.add(
                                words.say(result.isLeftOut() ? "report.more.left-out" : "record.account.unanswered")));
        if (result.standing() == CellStanding.OPEN) {
            said.add(words.say("verdict", VerdictKind.OPEN));
        }
        result.decided().ifPresent(decided -> said.add(words.say("record.short-disposition", decided.disposition())));
        return String.join("; ", said);
    }

    private List<String> which(FoundInRun result, AccountLine.Checked checked) {
        int count = checked.drawing().instances().count();
        if (count == 1) {
            return List.of();
        }
        return List.of(
                result.instances().isEmpty() || result.instances().size() == count
                        ? words.say("drawing.all-of", count)
                        : words.say("drawing.one-of", result.instances(), count));
    }

    /** What is no reading by itself says of what it is made; a bonus of size says how far the limit goes. */
    private void made(FoundInRun result, AccountLine.Checked checked, List<String> said) {
        Finding finding = checked.line().finding();
        corrected(finding, checked.measured()).ifPresent(said::add);
        workedOutOf(result, finding).ifPresent(said::add);
        finding.check()
                .asDimension()
                .filter(dimension -> dimension.combine() != Combine.EACH
                        && finding.measured().size() > 1)
                .ifPresent(dimension -> said.add(words.say(
                        "report.more.made",
                        words.say("report.combine", dimension.combine()),
                        finding.measured().size())));
        finding.allowed()
                .ifPresent(allowed -> said.add(words.say(
                        "report.more.allowed",
                        StepFigures.of(finding).judged(finding.value().orElseThrow()),
                        Figures.withUnit(
                                StepFigures.of(finding).size(allowed),
                                finding.step().limits().orElseThrow().unit()))));
    }

    /** From which sizes it was brought to the reference temperature, and at which temperatures these were read. */
    private Optional<String> corrected(Finding finding, List<Measured> measured) {
        List<String> read = measured.stream()
                .filter(one ->
                        one.forTemperature().filter(by -> by.signum() != 0).isPresent())
                .sorted(Comparator.comparing(Measured::uncorrected))
                .map(one -> ResultText.shown(finding, one))
                .toList();
        return finding.warmth()
                .filter(any -> !read.isEmpty())
                .map(warmth -> words.say(
                        "report.more.corrected",
                        words.say("record.temperature-in", warmth.climate().scale()),
                        results.between(read.get(0), read.get(read.size() - 1)),
                        warmth.part().orElseThrow(),
                        warmth.gauge().orElseThrow()));
    }

    /** What nobody read by itself is made of characteristics that somebody did. */
    private Optional<String> workedOutOf(FoundInRun result, Finding finding) {
        Plan plan = article.runs().get(result.column()).plan();
        List<String> parts = finding.step().check().restsOn().stream()
                .map(plan::step)
                .map(step -> plan.balloon(step).map(BalloonNumber::text).orElse(step.name()))
                .distinct()
                .toList();
        boolean readByNobody = finding.measured().isEmpty() && finding.value().isPresent();
        return readByNobody && !parts.isEmpty()
                ? Optional.of(words.say("report.more.worked-out", parts))
                : Optional.empty();
    }

    /** Which paper proves it, and where. */
    private void document(Line line, List<String> said) {
        line.step()
                .check()
                .asDocument()
                .map(DocumentCheck::where)
                .filter(where -> !where.isEmpty())
                .ifPresent(said::add);
        line.step()
                .check()
                .asDocument()
                .flatMap(any -> line.pass().giving())
                .map(giving -> giving.document())
                .ifPresent(document -> said.add(new DocumentWords(words).numbered(document)
                        + (document.number().isEmpty() ? "" : ", " + document.dated())));
    }

    /** Sheet and zone as the drawing has them. */
    String place(ReportLine one) {
        return new DrawingWords(words).place(one.drawing());
    }
}
