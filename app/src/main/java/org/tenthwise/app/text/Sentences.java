package org.tenthwise.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tenthwise.model.compute.uncertainty.UncertaintyRatio;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.AnswerFinding;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Plausible;
import org.tenthwise.model.record.PlugFinding;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.record.WiresFinding;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * Findings in words: the verdict, its distance, the value, and how a whole sheet is called. The same on the screen, in
 * the record and on the command line. What to do next is {@link Advice}'s, what else there is to say {@link Remarks}'.
 */
public final class Sentences {

    private final Words words;

    public Sentences(Words words) {
        this.words = words;
    }

    /** One of the five words. */
    public String standing(Finding finding) {
        return words.say("verdict", finding.verdict().standing());
    }

    /** How far from which limit, or what is missing; empty where there is nothing to add to the verdict. */
    public String distance(Finding finding) {
        if (finding instanceof AnswerFinding && finding.verdict().standing() == VerdictKind.OPEN) {
            return words.say("distance.not-answered");
        }
        if (finding instanceof WiresFinding wires && (wires.bottoms() || wires.mayBottom())) {
            return rootClearance(wires);
        }
        if (finding.verdict().standing() == VerdictKind.OPEN) {
            if (finding.missing() == 0) {
                return words.say(
                        "distance.waits-for", finding.step().check().restsOn().get(0));
            }
            return words.say(finding.missing() == 1 ? "distance.one-missing" : "distance.missing", finding.missing());
        }
        if (finding instanceof PlugFinding plug
                && plug.feel().isPresent()
                && plug.feel().get() != plug.check().feel().answer()) {
            return words.say(
                    "distance.felt",
                    felt(plug.feel().get()),
                    felt(plug.check().feel().answer()));
        }
        return finding.verdict()
                .margin()
                .map(margin -> distance(finding, margin))
                .orElseGet(() -> Plausible.spoils(finding) ? words.say("distance.far-off") : "");
    }

    private String felt(Answer answer) {
        return words.say(words.key("answered", Question.PLUG_FEELS), answer);
    }

    private String distance(Finding finding, Verdict.Margin margin) {
        return distance(StepFigures.of(finding), finding instanceof RunOutFinding, margin);
    }

    /**
     * How far the size of a step judged by one size lies from a limit.
     *
     * @param places its sizes are known to
     */
    public String distance(Step step, int places, Verdict.Margin margin) {
        return distance(StepFigures.of(step, places), false, margin);
    }

    private String distance(StepFigures figures, boolean onlyLimit, Verdict.Margin margin) {
        String limit = onlyLimit ? words.say("limit.only") : words.say("limit", margin.limit());
        if (margin.distance().signum() == 0) {
            return words.say("distance.on", limit);
        }
        String key = margin.inside()
                ? "distance.inside"
                : switch (margin.limit()) {
                    case LOWER -> "distance.below";
                    case UPPER -> "distance.above";
                };
        return words.say(
                key, figures.distance(margin.distance()) + " " + figures.unit().symbol(), limit);
    }

    /** The size judged, or what was answered; empty where there is neither yet. */
    public String value(Finding finding) {
        if (finding instanceof AnswerFinding answers) {
            return answered(answers);
        }
        if (finding instanceof PlugFinding plug) {
            return clearance(plug);
        }
        String value = StepFigures.value(finding)
                .map(size -> StepFigures.of(finding).judged(size))
                .orElse("");
        return value.isEmpty() || finding.verdict().standing() != VerdictKind.OPEN
                ? value
                : words.say("value.so-far", value);
    }

    private String answered(AnswerFinding finding) {
        List<String> said = new ArrayList<>();
        for (Question question : finding.step().check().questions()) {
            Optional.ofNullable(finding.answers().get(question))
                    .ifPresent(answer -> said.add(words.say(words.key("answered", question), answer)));
        }
        return String.join(", ", said);
    }

    private String clearance(PlugFinding finding) {
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

    /** What a record says of its part, and who signed for it: "Conforms. Accepted by Inspector 1." */
    public String outcome(Sheet sheet) {
        return new OutcomeWords(words).whole(sheet);
    }

    /** The material lot, or that there is none; empty where nothing was said. */
    public String lot(Event.Begun begun) {
        return begun.noLot() ? words.say("lot.none") : begun.lot();
    }

    /** The limits as the plan writes them; empty for a step that only asks. */
    public String limits(Step step) {
        return StepFigures.limits(step).map(this::limits).orElse("");
    }

    /** Where the limits were taken from; empty for a step that measures nothing. */
    public String limitsFrom(Step step) {
        return StepFigures.limits(step)
                .map(limits -> limits.origin()
                        .map(origin -> words.say("limits.from", origin.designation(), origin.standard()))
                        .orElseGet(() -> words.say("limits.as-drawn")))
                .orElse("");
    }

    /**
     * How sure a size measured so is, and how often that goes into the tolerance; empty where the plan names nothing.
     */
    public String uncertainty(Step step) {
        return step.check()
                .means()
                .flatMap(Check.Means::uncertainty)
                .map(uncertainty -> {
                    String said = words.say(
                            "uncertainty",
                            uncertainty.name(),
                            Figures.written(uncertainty.expanded()),
                            uncertainty.expanded().unit().symbol(),
                            Figures.number(uncertainty.coverageFactor()));
                    OptionalDouble ratio = StepFigures.limits(step)
                            .map(limits -> UncertaintyRatio.of(
                                    limits, uncertainty.expanded().length()))
                            .orElse(OptionalDouble.empty());
                    return ratio.isEmpty()
                            ? said
                            : said + " "
                                    + words.say(
                                            "uncertainty.ratio",
                                            Figures.number(BigDecimal.valueOf(ratio.getAsDouble())
                                                    .setScale(1, RoundingMode.DOWN)));
                })
                .orElse("");
    }

    private String limits(Limits limits) {
        String unit = limits.unit().symbol();
        Optional<String> lower = limits.lower().map(Figures::written);
        Optional<String> upper = limits.upper().map(Figures::written);
        if (lower.isPresent() && upper.isPresent()) {
            return words.say("limits.between", lower.get(), upper.get(), unit);
        }
        return upper.map(most -> words.say("limits.at-most", most, unit))
                .orElseGet(() -> words.say("limits.at-least", lower.orElseThrow(), unit));
    }

    /** What was signed for a characteristic that did not pass; empty where nothing was. */
    public String disposition(Line line) {
        return line.disposed()
                .map(d -> words.say("disposition", d.disposition()))
                .orElse("");
    }

    /**
     * The number a disposition was signed under, or that none was given where one belongs to it; empty where none does.
     */
    public String document(Event.DispositionSigned disposed) {
        String name = words.say("disposition.number", disposed.disposition());
        return disposed.document()
                .map(number -> words.say("disposition.document", name, number))
                .orElse(
                        disposed.disposition().departsFromTheDrawing()
                                ? words.say("disposition.no-document", name)
                                : "");
    }

    /** What a person typed, as a sentence beside others: with a full stop, typed or not. */
    public static String ended(String typed) {
        return typed.matches(".*[.!?…]") ? typed : typed + ".";
    }

    /**
     * What was signed last for a characteristic and does not hold any more; empty where nothing was or it still holds.
     */
    public String lapsed(Line line) {
        return line.lapsed()
                .map(Disposing::disposed)
                .map(signed -> words.say(
                        signed.disposition().changesTheWork() ? "signed.done" : "signed.lapsed",
                        words.say("disposition", signed.disposition()),
                        signed.signedBy()))
                .orElse("");
    }

    /** That a characteristic was ever repaired, which no later reading undoes; empty where it was not. */
    public String repaired(Line line) {
        return line.repaired() ? words.say("disposition.repaired") : "";
    }

    /** The room between wire and root, or how far short of it; where the plan gives no root, that it cannot be told. */
    public String rootClearance(WiresFinding finding) {
        StepFigures figures = StepFigures.of(finding);
        if (finding.basicClearance().isPresent()) {
            return words.say(finding.mayBottom() ? "wires.may-bottom" : "wires.root-unknown");
        }
        return finding.rootClearance()
                .map((Length room) -> words.say(
                        room.signum() == 0 ? "wires.on-root" : finding.bottoms() ? "wires.bottoms" : "wires.root-room",
                        figures.withUnit(room.abs())))
                .orElse("");
    }
}
