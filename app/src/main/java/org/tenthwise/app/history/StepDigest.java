package org.tenthwise.app.history;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.ReadingSummary.GaugeMark;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.tolerance.Limits;

/** Draws what one step of a run came to, with all its readings. */
final class StepDigest {

    private StepDigest() {}

    static RunDigest.OfStep of(Run run, Line line) {
        List<ReadingSummary> readings = PassStory.of(run, line).stream()
                .flatMap(story -> story.readings().stream().map(taken -> reading(story, taken)))
                .toList();
        return new RunDigest.OfStep(line, step(line), readings);
    }

    private static StepSummary step(Line line) {
        Finding finding = line.finding();
        Step step = line.step();
        Optional<Limits> limits = step.limits().map(known -> new Limits(known.lower(), known.upper()));
        int read = finding.measured().stream()
                .mapToInt(measured -> measured.reading().typed().places())
                .max()
                .orElse(0);
        return new StepSummary(
                step.number(),
                step.name(),
                step.stepClass(),
                limits,
                Math.max(limits.map(Limits::places).orElse(0), read),
                finding.verdict(),
                finding.value(),
                line.disposed().map(disposed -> new StepSummary.Disposed(disposed.disposition(), disposed.signedBy())),
                found(line.pass()));
    }

    private static Optional<StepSummary.Found> found(Pass pass) {
        return Stream.concat(
                        pass.readings().stream().map(Pass.Reading::entry),
                        pass.answers().stream().map(Pass.Answering::entry))
                .max(Comparator.comparing(Entry::seq))
                .map(last -> new StepSummary.Found(last.by(), last.at()));
    }

    private static ReadingSummary reading(PassStory story, Taken<Pass.Reading> taken) {
        Pass.Reading reading = taken.what();
        Slot slot = story.slot(reading);
        return new ReadingSummary(
                taken.entry().seq(),
                story.step().number(),
                story.pass().number(),
                slot.place().name(),
                slot.repeat(),
                reading.typed(),
                taken.counts() ? story.measured(reading).map(Measured::value) : Optional.empty(),
                story.standing(reading),
                taken.setting()
                        .map(setting -> new GaugeMark(
                                setting.gauge().kind(), setting.gauge().id())),
                taken.entry().by(),
                taken.entry().at(),
                taken.struck().map(Pass.Struck::reason));
    }
}
