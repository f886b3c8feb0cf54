package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.model.compute.form.WallForm;
import org.tenthwise.model.compute.form.WallReading;
import org.tenthwise.model.compute.roundness.Angle;
import org.tenthwise.model.compute.temperature.AtTwenty;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;

/** A plain size: every reading as a size, combined, judged, and what the wall looks like. */
final class SizeAssessment {

    /** A change of size over the wall is worth a name from a tenth of the tolerance on; common practice. */
    private static final BigDecimal NOTICEABLE_SHARE = new BigDecimal("0.1");

    private static final BigDecimal HALF_TURN = BigDecimal.valueOf(180);

    private SizeAssessment() {}

    /** @param wires what is found of the flanks that the same tool cuts; absent where it cuts none */
    static SizeFinding of(Plan plan, Step step, CheckOfDimension check, Pass pass, Run run, Optional<Finding> wires) {
        Optional<TemperatureEffect> warmth = TemperatureEffect.of(plan, step, pass);
        Optional<AtTwenty> toTwenty = warmth.flatMap(TemperatureEffect::correction);
        Optional<CheckOfSize> cut = check.asSize();
        Optional<Touch> touch = cut.map(size -> Touch.of(size, pass));
        List<Measured> measured = OfOneGauge.of(step, check, measure(check.slots(), pass), run).stream()
                .map(read -> toTwenty.map(read::corrected).orElse(read))
                .map(read -> touch.map(read::corrected).orElse(read))
                .toList();
        int unsaid = warmth.map(TemperatureEffect::missing).orElse(0)
                + touch.map(Touch::missing).orElse(0);
        int missing = stillToRead(check, measured) + unsaid;
        boolean spoilt = Plausible.spoils(check, measured, warmth);
        Combined read = Combined.of(check, measured).ofItsDatum(check);
        Combined combined = (unsaid == 0 ? read.with(missing, check) : read.stillOpen()).provingNothingIf(spoilt);
        Function<Optional<Length>, Optional<Proposal>> offered = atMost -> cut.filter(size -> unsaid == 0 && !spoilt)
                .flatMap(size -> ProposalAssessment.of(size, measured, read, pass, run, atMost));
        Optional<Flanks> flanks = wires.flatMap(at -> Flanks.of(step, cut.orElseThrow(), at, offered));
        Optional<Proposal> proposal = flanks.filter(Flanks::forbidCutting).isPresent()
                ? Optional.empty()
                : offered.apply(wires.flatMap(at -> Flanks.deepest(cut.orElseThrow(), at)));
        return new SizeFinding(
                step,
                check,
                measured,
                combined.value(),
                combined.deciding(),
                combined.past(),
                proposal,
                flanks,
                WallForm.of(cut.map(size -> wall(size, measured)).orElse(List.of()), noticeable(cut)),
                combined.verdict(),
                missing,
                warmth);
    }

    private static int stillToRead(CheckOfDimension check, List<Measured> measured) {
        return check.combine() == Combine.SIXTEEN_PERCENT
                ? SixteenPercent.missing(check, measured)
                : check.slots().size() - measured.size();
    }

    /** The readings of a pass that count, in slot order, each as the size it stands for. */
    static List<Measured> measure(List<Slot> slots, Pass pass) {
        Map<String, Pass.Reading> standing = pass.standing();
        List<Measured> measured = new ArrayList<>();
        for (Slot slot : slots) {
            Pass.Reading reading = standing.get(slot.key());
            if (reading != null) {
                measured.add(Measured.of(reading, slot));
            }
        }
        return measured;
    }

    private static Length noticeable(Optional<CheckOfSize> cut) {
        return cut.flatMap(size -> size.limits().width())
                .map(width -> width.times(NOTICEABLE_SHARE))
                .orElse(Length.ZERO);
    }

    /**
     * Places without a depth are taken to lie at one, unless two of them are read the same way: then nobody knows which
     * lie together.
     */
    private static List<WallReading> wall(CheckOfSize check, List<Measured> measured) {
        List<Optional<BigDecimal>> ways = check.places().stream()
                .filter(place -> place.depth().isEmpty() && place.angle().isPresent())
                .map(place -> way(check, place))
                .toList();
        boolean atOneDepth = ways.stream().distinct().count() == ways.size();
        return measured.stream()
                .map(read -> new WallReading(
                        read.slot().place().depth().map(Written::length),
                        way(check, read.slot().place())
                                .filter(any -> atOneDepth
                                        || read.slot().place().depth().isPresent()),
                        read.value()))
                .toList();
    }

    /**
     * The angle as far as it tells one reading from another: straight across, what is read at 0° is read at 180° once
     * more.
     */
    private static Optional<BigDecimal> way(CheckOfSize check, Place place) {
        return place.angle()
                .map(angle -> Angle.inOneTurn(check.feature().isRound() ? angle.remainder(HALF_TURN) : angle));
    }
}
