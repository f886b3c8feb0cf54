package org.tenthwise.app.history;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.ReadingSummary.GaugeMark;
import org.tenthwise.app.history.SizeSummary.Bounds;
import org.tenthwise.app.history.SizeSummary.FollowedBy;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.verdict.VerdictKind;

/** Draws what a series over parts needs of a step. */
final class SizeDigest {

    private SizeDigest() {}

    /**
     * @param found who found it last; absent where nobody did
     * @param before what is drawn of the steps before it
     * @return absent for what is judged by no size, and where nothing was found yet
     */
    static Optional<SizeSummary> of(
            Plan plan, Line line, Optional<StepSummary.Found> found, List<RunDigest.OfStep> before) {
        return line.step().limits().isEmpty() ? Optional.empty() : found.map(by -> of(plan, line, by, before));
    }

    private static SizeSummary of(Plan plan, Line line, StepSummary.Found by, List<RunDigest.OfStep> before) {
        Step step = line.step();
        Finding last = line.finding();
        Finding asCut = asCut(line).orElse(last);
        List<Pass.Reading> readings = readings(last);
        List<Pass.Reading> cut = readings(asCut);
        return new SizeSummary(
                step.operation(),
                followedBy(step, plan),
                step.check().key(),
                step.drawing().requirement(),
                bounds(last),
                complete(asCut),
                complete(last),
                (int) cutsBegun(line).count(),
                !last.farOff().isEmpty() || !asCut.farOff().isEmpty(),
                line.byConcession(),
                last.expanded(),
                last(cut).map(Entry::seq).orElseGet(() -> elsewhere(line, before)),
                last(cut).map(Entry::at).orElse(by.at()),
                last(readings).map(Entry::seq).orElseGet(() -> elsewhere(line, before)),
                readings.isEmpty()
                        ? List.of(by.by())
                        : readings.stream()
                                .map(reading -> reading.entry().by())
                                .distinct()
                                .toList(),
                readings.isEmpty()
                        ? by.gauge().stream().toList()
                        : readings.stream()
                                .flatMap(reading -> reading.setting().stream())
                                .map(setting -> new GaugeMark(
                                        setting.gauge().kind().key(),
                                        setting.gauge().id()))
                                .distinct()
                                .toList());
    }

    private static FollowedBy followedBy(Step step, Plan plan) {
        Optional<BalloonNumber> balloon = step.drawing().balloon();
        if (balloon.isEmpty()) {
            return FollowedBy.NUMBER_AND_NAME;
        }
        long alike = plan.steps().stream()
                .flatMap(any -> any.drawing().balloon().stream())
                .filter(balloon.get()::isSame)
                .count();
        return alike == 1 ? FollowedBy.BALLOON : FollowedBy.BALLOON_AND_NAME;
    }

    /** Numbers of the passes that were begun as metal came off, or may have. */
    private static Stream<Integer> cutsBegun(Line line) {
        return line.passes().stream()
                .filter(pass -> pass.ended()
                        .filter(ended -> ended.by().event().takesMetal())
                        .isPresent())
                .map(pass -> pass.number() + 1);
    }

    private static Optional<Finding> asCut(Line line) {
        int from = cutsBegun(line).max(Comparator.naturalOrder()).orElse(1);
        return line.passes().stream()
                .filter(pass -> pass.number() >= from)
                .flatMap(pass -> line.found(pass).stream())
                .filter(finding -> complete(finding).isPresent())
                .findFirst();
    }

    private static Optional<PartSize> complete(Finding finding) {
        return finding.verdict().standing() == VerdictKind.OPEN ? Optional.empty() : PartSize.of(finding);
    }

    private static List<Pass.Reading> readings(Finding finding) {
        return finding.measured().stream()
                .flatMap(measured -> finding.readFor(measured).stream())
                .map(measured -> measured.reading())
                .toList();
    }

    private static Optional<Entry> last(List<Pass.Reading> readings) {
        return readings.stream().map(Pass.Reading::entry).max(Comparator.comparing(Entry::seq));
    }

    /** Of what a document says its entry; of what is worked out that of the last reading it rests on; else none, 0. */
    private static long elsewhere(Line line, List<RunDigest.OfStep> before) {
        return Stream.concat(
                        line.passes().stream()
                                .flatMap(pass -> pass.documents().stream())
                                .map(given -> given.entry().seq()),
                        before.stream()
                                .filter(step -> line.step()
                                        .check()
                                        .restsOn()
                                        .contains(step.step().number()))
                                .flatMap(step -> step.size().stream())
                                .map(SizeSummary::lastEntry))
                .max(Comparator.naturalOrder())
                .orElse(0L);
    }

    private static Bounds bounds(Finding finding) {
        if (!finding.check().isBestAtZero()) {
            return Bounds.PLAIN;
        }
        return finding.isOfOneSize() ? Bounds.FROM_ZERO : Bounds.MOVING;
    }
}
