package org.tenthwise.app.history;

import java.util.Optional;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.StepEvent;

/**
 * Something said in a run that tells of another tool or another edge, or makes it likely: a note or a doubt that speaks
 * of a tool, or the step of a set-up at which somebody confirmed that the tools are new. What was cut before it and
 * what was cut after it are not of one series. A word too many costs a break; a word too few would hide one.
 *
 * @param seq place in the ledger
 * @param operation the one it is said of; 0 for all
 * @param words as they were said
 */
public record ToolChange(long seq, int operation, String words) {

    static Optional<ToolChange> in(Entry entry, Plan plan) {
        return entry.event()
                .as(StepEvent.NoteMade.class)
                .map(note -> said(entry, plan, note.step(), note.words()))
                .or(() -> entry.event()
                        .as(StepEvent.DoubtFlagged.class)
                        .map(doubt -> said(entry, plan, doubt.step(), doubt.words())))
                .orElseGet(() ->
                        entry.event().as(StepEvent.Answered.class).flatMap(answer -> confirmed(entry, plan, answer)));
    }

    private static Optional<ToolChange> said(Entry entry, Plan plan, int step, String words) {
        return ToolWords.speakOfATool(words)
                ? Optional.of(new ToolChange(
                        entry.seq(), step == 0 ? 0 : plan.step(step).operation(), words))
                : Optional.empty();
    }

    private static Optional<ToolChange> confirmed(Entry entry, Plan plan, StepEvent.Answered answered) {
        Step step = plan.step(answered.step());
        return step.stepClass() == StepClass.SET_UP
                        && answered.answer() == Answer.YES
                        && ToolWords.speakOfANewTool(step.name())
                ? Optional.of(new ToolChange(entry.seq(), 0, step.name()))
                : Optional.empty();
    }
}
