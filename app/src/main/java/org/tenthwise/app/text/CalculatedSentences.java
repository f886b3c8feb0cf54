package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.CalculatedCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.CalculatedFinding;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** What is said of what is worked out of other checks. */
final class CalculatedSentences extends FindingSentences {

    private static final String EITHER_SIDE = "±";

    private final CalculatedFinding finding;

    CalculatedSentences(CalculatedFinding finding, Words words) {
        super(finding, words);
        this.finding = finding;
    }

    /** The expression as the plan has it, and with the figures in the places of its names. */
    @Override
    String asked() {
        String plain = finding.check().of().with(name -> name);
        return finding.value().isEmpty()
                ? plain
                : words.say(
                        "calculated.with-figures", plain, finding.check().of().with(this::figures));
    }

    private String figures(String name) {
        return finding.parts().stream()
                .filter(part -> part.use().name().equals(name))
                .map(CalculatedSentences::figures)
                .map(figures -> figures.startsWith(EITHER_SIDE) ? "(" + figures + ")" : figures)
                .findFirst()
                .orElse(name);
    }

    /**
     * A figure, or the least and the greatest of several, as the step has them that it is of; the same to either side.
     */
    public static String figures(CalculatedFinding.Part part) {
        StepFigures figures = StepFigures.of(part.step(), part.places());
        Length least = Length.least(part.sizes());
        Length greatest = Length.greatest(part.sizes());
        if (least.equals(greatest)) {
            return figures.size(least);
        }
        return least.negated().equals(greatest)
                ? EITHER_SIDE + figures.size(greatest)
                : figures.size(least) + "…" + figures.size(greatest);
    }

    @Override
    String distance() {
        if (finding.verdict().standing() == VerdictKind.OPEN) {
            return words.say("distance.waits-for", finding.driver());
        }
        return finding.noAnswer()
                .map(why -> words.sentence(words.say("calculated.no-answer", words.say(why))))
                .orElseGet(super::distance);
    }

    /** From the least to the greatest, as both must lie inside. */
    @Override
    String value() {
        return finding.least()
                .flatMap(least -> finding.greatest().map(greatest -> fromTo(least, greatest)))
                .orElse("");
    }

    private String fromTo(Length least, Length greatest) {
        StepFigures figures = StepFigures.of(finding);
        String from = figures.judged(least);
        String to = figures.judged(greatest);
        return from.equals(to) ? from : words.say("calculated.from-to", from, to);
    }

    @Override
    List<Weighed> remarks() {
        List<Weighed> said = new ArrayList<>();
        if (finding.value().isEmpty()) {
            return said;
        }
        said.add(Weighed.how(words.say(
                "calculated.parts",
                words.list(finding.parts().stream().map(this::said).toList()))));
        finding.expanded()
                .ifPresent(expanded -> said.add(Weighed.how(words.say(
                        "calculated.uncertainty", StepFigures.of(finding).withUnit(expanded)))));
        return said;
    }

    private String said(CalculatedFinding.Part part) {
        CalculatedCheck.Use use = part.use();
        return words.say(words.key("calculated.part", use.by()), use.name(), use.step(), figures(part));
    }

    @Override
    Optional<ToDo> failed() {
        return Optional.of(ToDo.of(words.say("next.calculated.fail", finding.driver())));
    }

    @Override
    Optional<String> unproven() {
        return Optional.of(words.say("next.calculated.unproven", finding.driver()));
    }
}
