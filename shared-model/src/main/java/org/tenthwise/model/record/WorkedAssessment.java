package org.tenthwise.model.record;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.model.compute.temperature.AtTwenty;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.WorkedCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Explained;

/**
 * A size or an angle worked out of several readings: place by place, then combined and judged as any size is. Where the
 * readings of a place come to nothing, nothing is proven by any of them. With metal left at one place it stays open
 * until the others are read: a cut goes round all of them.
 */
final class WorkedAssessment {

    private WorkedAssessment() {}

    static WorkedFinding of(Plan plan, Step step, WorkedCheck check, Pass pass) {
        Optional<TemperatureEffect> warmth = TemperatureEffect.of(plan, step, pass);
        Optional<AtTwenty> toTwenty = warmth.flatMap(TemperatureEffect::correction);
        Map<String, Measured> read = new HashMap<>();
        SizeAssessment.measure(check.slots(), pass)
                .forEach(one -> read.put(one.slot().key(), one));
        List<WorkedFinding.At> at = IntStream.range(0, check.places().size())
                .mapToObj(place -> at(check, place, read, toTwenty))
                .toList();
        int temperatures = warmth.map(TemperatureEffect::missing).orElse(0);
        int missing = check.slots().size() - read.size() + temperatures;
        List<Measured> worked =
                at.stream().flatMap(one -> one.worked().stream()).toList();
        boolean spoilt = at.stream().anyMatch(one -> one.far() || one.refused().isPresent())
                || warmth.filter(Plausible::isFarOff).isPresent();
        Combined together = Combined.of(check, worked);
        boolean cutUnread = missing > 0 && together.verdict().standing() == VerdictKind.CUT_AGAIN;
        Combined combined = (temperatures == 0 && !cutUnread ? together.with(missing, check) : together.stillOpen())
                .provingNothingIf(spoilt);
        boolean nothing = missing == 0 && combined.verdict().standing() == VerdictKind.OPEN;
        return new WorkedFinding(
                step,
                check,
                at,
                combined.value(),
                combined.deciding(),
                nothing ? Verdict.plain(VerdictKind.UNPROVEN) : combined.verdict(),
                missing,
                warmth);
    }

    private static WorkedFinding.At at(
            WorkedCheck check, int place, Map<String, Measured> read, Optional<AtTwenty> toTwenty) {
        List<Slot> slots = check.slotsAt(place);
        List<Measured> raw = slots.stream()
                .flatMap(slot -> Optional.ofNullable(read.get(slot.key())).stream())
                .toList();
        if (raw.size() < slots.size()) {
            return new WorkedFinding.At(
                    check.places().get(place), raw, List.of(), Optional.empty(), List.of(), Optional.empty(), false);
        }
        List<Length> lengths = raw.stream().map(Measured::value).toList();
        try {
            Length result = check.by().of(lengths);
            List<Measured> readings = raw.stream()
                    .map(one -> new Measured(one.reading(), one.slot(), result))
                    .map(one -> toTwenty.map(one::corrected).orElse(one))
                    .toList();
            return new WorkedFinding.At(
                    check.places().get(place),
                    raw,
                    readings,
                    check.by().beside(lengths),
                    IntStream.range(0, lengths.size())
                            .mapToObj(which -> check.by().sensitivity(lengths, which))
                            .toList(),
                    Optional.empty(),
                    Plausible.isFarOff(check, result));
        } catch (IllegalArgumentException e) {
            return new WorkedFinding.At(
                    check.places().get(place),
                    raw,
                    List.of(),
                    Optional.empty(),
                    List.of(),
                    Optional.of(Explained.why(e)),
                    false);
        }
    }
}
