package org.tenthwise.app.text;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.record.PlugFitFinding;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** What is said of a plug in its bore. */
final class PlugFitSentences extends FindingSentences {

    private final PlugFitFinding finding;

    PlugFitSentences(PlugFitFinding finding, Words words) {
        super(finding, words);
        this.finding = finding;
    }

    /** A plug felt otherwise than wanted goes before what the gauges say. */
    @Override
    String distance() {
        return finding.feel()
                .filter(feel -> finding.verdict().standing() != VerdictKind.OPEN && finding.isFeltOtherwise())
                .map(feel -> words.say(
                        "distance.felt", felt(feel), felt(finding.check().feel().answer())))
                .orElseGet(super::distance);
    }

    private String felt(Answer answer) {
        return words.say(words.key("answered", Question.PLUG_FEELS), answer);
    }

    /** The clearance; before there is one, how it felt. */
    @Override
    String value() {
        StepFigures figures = StepFigures.of(finding);
        return finding.clearance()
                .map(clearance -> {
                    String least = figures.size(clearance.least());
                    String greatest = figures.size(clearance.greatest());
                    return least.equals(greatest)
                            ? words.say("plug.clear", least)
                            : words.say("plug.clear-between", least, greatest);
                })
                .orElseGet(() -> finding.feel().map(this::felt).orElse(""));
    }

    @Override
    String answeredBeside() {
        return finding.feel()
                .filter(feel -> finding.clearance().isPresent())
                .map(this::felt)
                .orElse("");
    }

    @Override
    String doubts() {
        return finding.contradiction()
                .map(how -> words.say("contradiction", how))
                .orElse("");
    }

    @Override
    List<Weighed> remarks() {
        return finding.contradiction().map(how -> Weighed.stays(words.say("contradiction", how))).stream()
                .toList();
    }

    /** No burr makes a plug too loose, and every cut makes it looser. */
    @Override
    Optional<ToDo> failed() {
        boolean tooLoose = finding.verdict()
                .margin()
                .filter(margin -> !margin.inside() && margin.limit() == Limit.UPPER)
                .isPresent();
        return Optional.of(ToDo.of(words.say(tooLoose ? "next.fail.plug.too-loose" : "next.fail.plug")));
    }

    @Override
    Optional<String> unproven() {
        return Optional.of(words.say("next.contradiction"));
    }
}
