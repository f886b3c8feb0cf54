package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/**
 * What may be said of the next cut, from the entries of a run alone.
 *
 * <p>The rules, in words. A size is cut once each of its places is read and, where they are taken, both temperatures are; or where
 * someone signed to cut on what is there and nothing was done to the step since, no gauge of it taken or set either. No amount is
 * given while a temperature is missing. An amount leaves every place that is read, or the one size the drawing makes of them, inside
 * both limits by the guard band; it takes metal off, no less than the least depth on each side, in whole steps of the register.
 */
final class CutOracle {

    private static final BigDecimal TWO = new BigDecimal("2");
    private static final BigDecimal USUAL_STEP = new BigDecimal("0.001");
    /** Pitch diameters are worked out to a tenth of a micrometre here. */
    private static final BigDecimal OF_A_THREAD = new BigDecimal("0.0003");
    private static final BigDecimal OF_WHAT_IS_ROUNDED = new BigDecimal("0.000005");

    private final List<Entry> entries;
    private final Counting counting;
    private final Oracle oracle;

    CutOracle(List<Facts> plan, List<Entry> entries) {
        this.entries = entries;
        this.counting = new Counting(entries);
        this.oracle = new Oracle(plan, entries);
    }

    /** Whether a step of that kind may be cut now. */
    boolean mayCut(Facts step) {
        return !(step.what() instanceof Facts.Size || step.what() instanceof Facts.Thread) || allRead(step) && warm(step) || signed(step);
    }

    /** What is wrong with an amount for a step; absent where nothing is. */
    Optional<String> against(Facts step, Length change) {
        if (!warm(step) || !allRead(step) && !signed(step)) {
            return Optional.of("is given too early");
        }
        BigDecimal cut = change.millimetres();
        return step.what() instanceof Facts.Size size ? ofSize(step, size, cut) : ofThread(step, (Facts.Thread) step.what(), cut);
    }

    private Optional<String> ofSize(Facts step, Facts.Size size, BigDecimal change) {
        BigDecimal off = size.kind().equals("bore") ? change : change.negate();
        BigDecimal one = counted(size.cuts().step().orElse(USUAL_STEP));
        if (off.signum() <= 0 || !size.cutAgain()) {
            return Optional.of("takes no metal off that may be taken");
        }
        if (off.remainder(one).signum() != 0) {
            return Optional.of("cannot be typed");
        }
        if (size.cuts().least().filter(least -> off.compareTo(least.multiply(TWO)) < 0).isPresent()) {
            return Optional.of("lets the tool rub");
        }
        boolean rounded = size.warm() || size.combine().equals("mean");
        return inside(bound(oracle.read(step, size), size.combine()), change, size.lower().map(size.guard()::add),
                size.upper().map(upper -> upper.subtract(size.guard())), rounded ? OF_WHAT_IS_ROUNDED : BigDecimal.ZERO);
    }

    private Optional<String> ofThread(Facts step, Facts.Thread thread, BigDecimal change) {
        if (change.signum() >= 0) {
            return Optional.of("takes no metal off that may be taken");
        }
        if (change.remainder(counted(USUAL_STEP)).signum() != 0) {
            return Optional.of("cannot be typed");
        }
        return inside(oracle.pitchDiameters(step), change, Optional.of(thread.lower().add(thread.guard())),
                Optional.of(thread.upper().subtract(thread.guard())), OF_A_THREAD);
    }

    private static List<BigDecimal> bound(List<BigDecimal> sizes, String combine) {
        return switch (combine) {
            case "mean" -> List.of(sizes.stream().reduce(BigDecimal.ZERO, BigDecimal::add).divide(BigDecimal.valueOf(sizes.size()), 12, RoundingMode.HALF_EVEN));
            case "largest" -> List.of(sizes.stream().max(BigDecimal::compareTo).orElseThrow());
            case "smallest" -> List.of(sizes.stream().min(BigDecimal::compareTo).orElseThrow());
            default -> sizes;
        };
    }

    private static Optional<String> inside(List<BigDecimal> bound, BigDecimal change, Optional<BigDecimal> least, Optional<BigDecimal> most, BigDecimal hair) {
        boolean inside = bound.stream().map(change::add).allMatch(size -> least.map(low -> size.compareTo(low.subtract(hair)) >= 0).orElse(true)
                && most.map(high -> size.compareTo(high.add(hair)) <= 0).orElse(true));
        return inside && !bound.isEmpty() ? Optional.empty() : Optional.of("leaves a place outside: " + bound);
    }

    private boolean allRead(Facts step) {
        int places = step.what() instanceof Facts.Size size ? size.places() : 2;
        int each = step.what() instanceof Facts.Size size ? size.each() : 1;
        Map<String, Counting.Read> read = counting.readings(step);
        return IntStream.rangeClosed(1, places).boxed().allMatch(place -> IntStream.rangeClosed(1, each)
                .allMatch(repeat -> read.containsKey(place + "." + repeat)));
    }

    private boolean warm(Facts step) {
        return !(step.what() instanceof Facts.Size size) || !size.warm() || counting.temperatures(step).size() == 2;
    }

    boolean signed(Facts step) {
        boolean signed = false;
        for (Entry entry : counting.counting(step)) {
            Event event = entry.event();
            if (event instanceof Event.CutOnThese cut && cut.step() == step.number()) {
                signed = true;
            } else if (counting.changes(entry, step.number()) || event instanceof Event.GaugeSet set && set.step() == step.number()
                    || event instanceof Event.GaugeChosen chosen && chosen.step() == step.number()
                    || event instanceof Event.Disposed disposed && disposed.step() == step.number()) {
                signed = false;
            }
        }
        return signed;
    }

    /** What a step of the register is on the diameter. */
    private BigDecimal counted(BigDecimal step) {
        return register().filter(Register.RADIUS::equals).isPresent() ? step.multiply(TWO) : step;
    }

    private Optional<Register> register() {
        return entries.stream().flatMap(entry -> entry.event() instanceof Event.MachineKnown known ? Optional.of(known.register()).stream() : Optional.<Register>empty().stream())
                .reduce((earlier, later) -> later);
    }
}
