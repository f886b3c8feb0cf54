package org.tenthwise.app.text;

import java.util.Optional;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Plausible;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/**
 * What to do next about a finding, in one or two short sentences or, where the work is to be moved, a line a move;
 * empty where there is nothing to do but go on.
 */
public final class Advice {

    private final Words words;
    private final CutAdvice cutting;

    public Advice(Words words) {
        this.words = words;
        this.cutting = new CutAdvice(words);
    }

    public String next(Line line) {
        return toDo(line, Optional.empty()).inOne();
    }

    /**
     * The same, a line a move.
     *
     * @param asked the reading that is asked for next; absent where none is, or nobody is asked
     */
    public ToDo toDo(Line line, Optional<Slot> asked) {
        ToDo signed = signedAlone(line);
        if (!signed.isEmpty()) {
            return signed;
        }
        return measureAnew(line)
                .map(ended -> ToDo.of(words.say(
                        ended.by().event().takesMetal() ? "next.cut-since" : "next.rested-on-changed", ended.step())))
                .orElseGet(() -> Plausible.spoils(line.finding())
                        ? ToDo.of(words.say("next.far-off"))
                        : nextOfSound(line, CutSoFar.last(line), asked));
    }

    /** Whether it tells too what the last cut took off. */
    public boolean tellsOfTheLastCut(Line line) {
        return line.disposed().isEmpty()
                && (line.finding().proposal().isPresent()
                        || CutSoFar.last(line)
                                .flatMap(CutSoFar::countsRather)
                                .filter(Register.RADIUS::equals)
                                .isPresent());
    }

    /**
     * What was signed for a step that did not pass, all there is to say once a run is closed; empty where nothing was.
     */
    public String signed(Line line) {
        return line.disposed()
                .filter(disposed -> !line.finding().verdict().passed())
                .map(disposed -> signed(disposed.disposition(), disposed.signedBy()))
                .orElse("");
    }

    /** The same as what there is to do. */
    ToDo signedAlone(Line line) {
        return ToDo.of(signed(line));
    }

    /** What was signed and by whom. */
    public String signed(Disposition disposition, String by) {
        return words.say("next.disposed", words.say("disposition", disposition), by);
    }

    /** What ended the last pass of a check at which nothing was taken since: a step that changed under it. */
    private static Optional<Pass.Ended> measureAnew(Line line) {
        boolean empty = line.pass().isEmpty();
        return line.passes().stream()
                .flatMap(pass -> pass.ended().stream())
                .reduce((earlier, later) -> later)
                .filter(ended -> empty && ended.why() == StepEvent.PassBegun.Why.RESTED_ON_CHANGED);
    }

    private ToDo nextOfSound(Line line, Optional<CutSoFar> last, Optional<Slot> asked) {
        Finding finding = line.finding();
        FindingSentences said = FindingSentences.of(finding, words);
        return switch (finding.verdict().standing()) {
            case PASS -> ToDo.of(cutting.twice(finding, last));
            case OPEN ->
                finding.proposal().isPresent() || finding.forbidsCutting()
                        ? ToDo.of(cutting.again(line, last))
                        : ToDo.NOTHING;
            case CUT_AGAIN -> ToDo.of(cutting.again(line, last));
            case UNPROVEN ->
                ToDo.of(said.unproven()
                        .orElseGet(() -> finding.proposal().isPresent()
                                ? cutting.unproven(line, last)
                                : words.say("next.unproven")));
            case FAIL ->
                finding.asTurn()
                        .map(turn -> new TruingAdvice(words).of(turn, asked))
                        .or(said::failed)
                        .orElseGet(() -> ToDo.of(failed(line, last)));
        };
    }

    private String failed(Line line, Optional<CutSoFar> last) {
        StepClass of = line.step().stepClass();
        String said = words.say(of == StepClass.DRAWING ? failedOfDrawing(line) : words.key("next.fail", of));
        return (said + " " + cutting.twice(line.finding(), last)).strip();
    }

    /** Nobody gives a part up on what was read once. */
    private static String failedOfDrawing(Line line) {
        Check check = line.step().check();
        if (!check.isMeasured()) {
            return check.means().isPresent() ? "next.fail.drawing.limit-gauge" : "next.fail.drawing.asked";
        }
        return line.pass()
                        .why()
                        .filter(StepEvent.PassBegun.Why.MEASURED_AGAIN::equals)
                        .isPresent()
                ? "next.fail.drawing.again"
                : "next.fail.drawing";
    }
}
