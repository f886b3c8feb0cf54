package org.tenthwise.app.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.ReadingSummary.GaugeMark;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.tolerance.Limits;

/** Draws what one step of a run came to, with all its readings. */
final class StepDigest {

    private StepDigest() {}

    static RunDigest.OfStep of(Line line) {
        Map<String, Slot> slots = new HashMap<>();
        line.step().check().everySlot().forEach(slot -> slots.put(slot.key(), slot));
        List<ReadingSummary> readings = new ArrayList<>();
        for (Pass pass : line.passes()) {
            Optional<Finding> finding = line.found(pass);
            Map<Long, Measured> counting = new HashMap<>();
            finding.ifPresent(found -> found.measured()
                    .forEach(measured -> counting.put(measured.reading().entry().seq(), measured)));
            for (Pass.Reading reading : pass.readings()) {
                readings.add(reading(
                        line.step(),
                        pass,
                        reading,
                        slots,
                        Optional.ofNullable(counting.get(reading.entry().seq())),
                        finding));
            }
        }
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

    private static ReadingSummary reading(
            Step step,
            Pass pass,
            Pass.Reading reading,
            Map<String, Slot> slots,
            Optional<Measured> counting,
            Optional<Finding> finding) {
        Slot slot = slots.getOrDefault(reading.slot(), new Slot(reading.slot(), Place.named(reading.slot()), 1));
        return new ReadingSummary(
                reading.entry().seq(),
                step.number(),
                pass.number(),
                slot.place().name(),
                slot.repeat(),
                reading.typed(),
                counting.map(Measured::value),
                counting.flatMap(measured -> finding.flatMap(found -> found.alone(measured)))
                        .map(verdict -> verdict.standing()),
                reading.setting()
                        .map(setting -> new GaugeMark(
                                setting.gauge().kind(), setting.gauge().id())),
                reading.entry().by(),
                reading.entry().at(),
                reading.struck().map(Pass.Struck::reason));
    }
}
