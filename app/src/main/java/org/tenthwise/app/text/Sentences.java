package org.tenthwise.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import org.tenthwise.model.compute.uncertainty.UncertaintyRatio;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.CalculatedFinding;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.ReadOtherwise;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Verdict;
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
        return FindingSentences.of(finding, words).distance();
    }

    /**
     * How far the size of a step judged by one size lies from a limit.
     *
     * @param places its sizes are known to
     */
    public String distance(Step step, int places, Verdict.Margin margin) {
        return FindingSentences.distance(
                StepFigures.of(step, places), margin, words.say("limit", margin.limit()), words);
    }

    /** The size judged, or what was answered; empty where there is neither yet. */
    public String value(Finding finding) {
        return FindingSentences.of(finding, words).value();
    }

    /** The same for a row of a list, where there is room for what decides alone. */
    public String listed(Finding finding) {
        return FindingSentences.of(finding, words).listed();
    }

    /** What was answered beside the value; empty where nothing was. */
    public String answeredBeside(Finding finding) {
        return FindingSentences.of(finding, words).answeredBeside();
    }

    /** What makes its readings worth nothing; empty where nothing does. */
    public String doubts(Finding finding) {
        return FindingSentences.of(finding, words).doubts();
    }

    /** What is asked, as the plan puts it; empty for what is measured. */
    public String asked(Finding finding) {
        return FindingSentences.of(finding, words).asked();
    }

    /** A figure that goes into one worked out, or the least and the greatest of several; while it is open, that. */
    public String figures(CalculatedFinding.Part part) {
        return part.sizes().isEmpty() ? words.say("calculated.open") : CalculatedSentences.figures(part);
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
        return step.limits().map(this::limits).orElse("");
    }

    /** Where the limits were taken from; what is checked on the way has none of the drawing. Empty without limits. */
    public String limitsFrom(Step step) {
        return step.limits()
                .map(limits -> limits.origin()
                        .map(origin -> words.say("limits.from", origin.designation(), origin.standard()))
                        .orElseGet(() -> words.say(step.isOfDrawing() ? "limits.as-drawn" : "limits.as-planned")))
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
                            Figures.withUnit(uncertainty.expanded()),
                            Figures.number(uncertainty.coverageFactor()));
                    OptionalDouble ratio = step.limits()
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
        if (limits.lower().isPresent() && limits.upper().isPresent()) {
            return words.say(
                    "limits.between",
                    Figures.written(limits.lower().get()),
                    Figures.withUnit(limits.upper().get()));
        }
        return limits.upper()
                .map(most -> words.say("limits.at-most", Figures.withUnit(most)))
                .orElseGet(() -> words.say(
                        "limits.at-least", Figures.withUnit(limits.lower().orElseThrow())));
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
    public String document(StepEvent.DispositionSigned disposed) {
        String name = words.say("disposition.number", disposed.disposition());
        return disposed.document()
                .map(number -> words.say("disposition.document", name, number))
                .orElse(
                        disposed.disposition().departsFromTheDrawing()
                                ? words.say("disposition.no-document", name)
                                : "");
    }

    /** What a person typed, within a sentence that goes on after it: without the full stop it was typed with. */
    public static String within(String typed) {
        return typed.replaceFirst("(?<![.\\s])\\s*\\.\\s*$", "");
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

    /** What an earlier round has otherwise, with nothing done to the work since; empty where none does. */
    public String readOtherwise(Run run, Line line) {
        return ReadOtherwise.of(line, run)
                .map(ReadOtherwise::before)
                .map(before -> words.say(
                        "size.read-before",
                        StepFigures.of(line.finding()).size(before),
                        before.slot().place().name()))
                .orElse("");
    }

    /** That a characteristic was ever repaired, which no later reading undoes; empty where it was not. */
    public String repaired(Line line) {
        return line.repaired() ? words.say("disposition.repaired") : "";
    }
}
