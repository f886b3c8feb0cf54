package org.tenthwise.app.history;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.ReadingSummary.GaugeMark;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Decimals;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/** Draws what one step of a run came to, with all its readings. */
final class StepDigest {

    private StepDigest() {}

    /** @param before what is drawn of the steps before it */
    static RunDigest.OfStep of(Sheet sheet, Line line, List<RunDigest.OfStep> before) {
        List<PassStory> passes = PassStory.of(sheet.run(), line);
        List<ReadingSummary> readings = passes.stream()
                .flatMap(story -> story.readings().stream().map(taken -> reading(story, taken)))
                .toList();
        Optional<StepSummary.Found> found = found(passes).or(() -> foundBefore(line, before));
        return new RunDigest.OfStep(
                line, step(sheet.plan(), line, found), SizeDigest.of(sheet.plan(), line, found, before), readings);
    }

    private static StepSummary step(Plan plan, Line line, Optional<StepSummary.Found> found) {
        Finding finding = line.finding();
        Step step = line.step();
        Optional<Limits> limits = step.limits().map(known -> new Limits(known.lower(), known.upper()));
        return new StepSummary(
                step.number(),
                step.name(),
                (step.isOfDrawing() ? plan.balloon(step) : step.drawing().balloon()).map(BalloonNumber::text),
                step.drawing().designator(),
                step.stepClass(),
                limits,
                limits.map(of -> Decimals.of(finding, of)).orElse(0),
                finding.verdict(),
                finding.value(),
                line.disposed().map(disposed -> new StepSummary.Disposed(disposed.disposition(), disposed.signedBy())),
                found,
                line.asked());
    }

    private static Optional<StepSummary.Found> found(List<PassStory> passes) {
        return passes.stream()
                .flatMap(story -> Stream.concat(
                        story.readings().stream().map(read -> Map.entry(read.entry(), Optional.<GaugeMark>empty())),
                        Stream.concat(
                                story.answers().stream().map(answer -> Map.entry(answer.entry(), mark(answer))),
                                story.documents().stream()
                                        .map(given -> Map.entry(given.entry(), Optional.<GaugeMark>empty())))))
                .max(Comparator.comparing(found -> found.getKey().seq()))
                .map(last ->
                        new StepSummary.Found(last.getKey().by(), last.getKey().at(), last.getValue()));
    }

    /** Of what is worked out of other steps: who found the last of them. */
    private static Optional<StepSummary.Found> foundBefore(Line line, List<RunDigest.OfStep> before) {
        Finding finding = line.finding();
        if (!isWorkedOutOfOthers(finding) || finding.verdict().standing() == VerdictKind.OPEN) {
            return Optional.empty();
        }
        return before.stream()
                .filter(step -> finding.check().restsOn().contains(step.step().number()))
                .flatMap(step -> step.step().found().stream())
                .max(Comparator.comparing(StepSummary.Found::at))
                .map(last -> new StepSummary.Found(last.by(), last.at(), Optional.empty()));
    }

    /** What is found of it can change with other steps alone. */
    static boolean isWorkedOutOfOthers(Finding finding) {
        return finding.settledFirst().isPresent();
    }

    private static Optional<GaugeMark> mark(Taken<?> taken) {
        return taken.setting()
                .map(Setting::gauge)
                .map(gauge -> new GaugeMark(gauge.kind().key(), gauge.id()));
    }

    private static ReadingSummary reading(PassStory story, Taken<Pass.Reading> taken) {
        Pass.Reading reading = taken.what();
        Slot slot = story.slot(reading);
        Optional<Measured> measured = taken.counts() ? story.measured(reading) : Optional.empty();
        return new ReadingSummary(
                taken.entry().seq(),
                story.step().number(),
                story.pass().number(),
                story.pass().ended().isPresent(),
                slot.place().name(),
                slot.repeat(),
                reading.typed(),
                measured.map(Measured::value),
                measured.flatMap(of -> story.step().limits().map(limits -> Decimals.of(of, limits)))
                        .orElse(reading.typed().places()),
                story.standing(reading),
                mark(taken),
                taken.entry().by(),
                taken.entry().at(),
                taken.struck().map(Pass.Struck::reason));
    }
}
