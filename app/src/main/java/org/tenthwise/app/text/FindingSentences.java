package org.tenthwise.app.text;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.record.AskedFinding;
import org.tenthwise.model.record.CalculatedFinding;
import org.tenthwise.model.record.DocumentFinding;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.OverWiresFinding;
import org.tenthwise.model.record.Plausible;
import org.tenthwise.model.record.PlugFitFinding;
import org.tenthwise.model.record.PositionFinding;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.record.TemperatureEffect;
import org.tenthwise.model.record.WorkedFinding;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** What is said of one finding as its kind has it: a class a kind. Most of it all kinds say alike, and that is here. */
abstract class FindingSentences {

    final Words words;
    private final Finding finding;

    FindingSentences(Finding finding, Words words) {
        this.finding = finding;
        this.words = words;
    }

    static FindingSentences of(Finding finding, Words words) {
        return finding.match(new Finding.Cases<>() {
            @Override
            public FindingSentences asked(AskedFinding answers) {
                return new AskedSentences(answers, words);
            }

            @Override
            public FindingSentences runOut(RunOutFinding runOut) {
                return new RunOutSentences(runOut, words);
            }

            @Override
            public FindingSentences size(SizeFinding size) {
                return new SizeSentences(size, words);
            }

            @Override
            public FindingSentences position(PositionFinding position) {
                return new PositionSentences(position, words);
            }

            @Override
            public FindingSentences worked(WorkedFinding worked) {
                return new WorkedSentences(worked, words);
            }

            @Override
            public FindingSentences plugFit(PlugFitFinding plug) {
                return new PlugFitSentences(plug, words);
            }

            @Override
            public FindingSentences calculated(CalculatedFinding calculated) {
                return new CalculatedSentences(calculated, words);
            }

            @Override
            public FindingSentences overWires(OverWiresFinding wires) {
                return new OverWiresSentences(wires, words);
            }

            @Override
            public FindingSentences document(DocumentFinding document) {
                return new DocumentSentences(document, words);
            }
        });
    }

    /** What the kind has to say beside verdict and advice, the weightiest first. */
    abstract List<Weighed> remarks();

    /** What is asked, as the plan puts it; empty for what is measured. */
    String asked() {
        return "";
    }

    /** How far from which limit, or what is missing; empty where there is nothing to add to the verdict. */
    String distance() {
        if (finding.verdict().standing() == VerdictKind.OPEN) {
            if (finding.missing() == 0) {
                return words.say("distance.waits-for", finding.check().restsOn().get(0));
            }
            return missing();
        }
        return finding.verdict()
                .margin()
                .map(this::distance)
                .orElseGet(() -> Plausible.spoils(finding) ? words.say("distance.far-off") : "");
    }

    /** What is missing; temperatures are told beside what is read at places, and answers where all of that is there. */
    private String missing() {
        int temperatures = finding.warmth().map(TemperatureEffect::missing).orElse(0);
        boolean read = finding.measured().size() >= finding.readingsInAll();
        return temperatures == 0
                ? words.say(read ? "distance.missing-answers" : "distance.missing", finding.missing())
                : words.say(
                        "distance.missing-temperatures", Math.max(0, finding.missing() - temperatures), temperatures);
    }

    private String distance(Verdict.Margin margin) {
        return distance(StepFigures.of(finding), margin, limit(margin), words);
    }

    /** How far from a limit of that name. */
    static String distance(StepFigures figures, Verdict.Margin margin, String limit, Words words) {
        if (margin.distance().signum() == 0) {
            return words.say("distance.on", limit);
        }
        String key = margin.inside()
                ? "distance.inside"
                : switch (margin.limit()) {
                    case LOWER -> "distance.below";
                    case UPPER -> "distance.above";
                };
        return words.say(key, Figures.withUnit(figures.distance(margin.distance()), figures.unit()), limit);
    }

    /** What the limit is called. */
    String limit(Verdict.Margin margin) {
        return words.say("limit", margin.limit());
    }

    /** The size judged, or what was answered; empty where there is neither yet. */
    String value() {
        String value = finding.value()
                .map(size -> StepFigures.of(finding).judged(size))
                .orElse("");
        return value.isEmpty() || finding.verdict().standing() != VerdictKind.OPEN
                ? value
                : words.say("value.so-far", value);
    }

    /** The same for a row of a list, where there is room for what decides alone. */
    String listed() {
        return value();
    }

    /** What was answered beside the value; empty where nothing was. */
    String answeredBeside() {
        return "";
    }

    /** Whether its remarks tell what is wrong with readings that are far off. */
    boolean tellsWhatIsFarOff() {
        return false;
    }

    /** What makes its readings worth nothing; empty where nothing does. */
    String doubts() {
        return "";
    }

    /** What to do where it fails, a line a move; absent where that goes by the class of the step. */
    Optional<ToDo> failed() {
        return Optional.empty();
    }

    /** What to do where it is unproven; absent where that goes by the cut there may be. */
    Optional<String> unproven() {
        return Optional.empty();
    }

    /** Why nothing may be cut although metal is left; absent where it may. */
    Optional<String> againstACut() {
        return Optional.empty();
    }

    /** What to mind with a cut that is offered; absent where there is nothing. */
    Optional<String> withACut() {
        return Optional.empty();
    }
}
