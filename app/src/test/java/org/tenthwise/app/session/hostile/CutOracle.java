package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;

/**
 * What may be said of the next cut, from the entries of a run alone.
 *
 * <p>The rules, in words. A size is cut once each of its places is read and, where they are taken, both temperatures
 * are, and a thread once the root under the wires is known; or where someone signed to cut on what is there and nothing
 * was done to the step since, no gauge of it taken or set either. No amount is given while a temperature is missing. An
 * amount leaves every place that is read, or the one size the drawing makes of them, inside both limits by the guard
 * band; it takes metal off, no less than the least depth on each side, in whole steps of the register. What may come
 * off at the most leaves each of them inside the limit on the other side by the guard band, and one step more would
 * not. What comes off the root of a thread comes off its pitch diameter as well: where that is known, it stays inside
 * by its guard band too.
 */
final class CutOracle {

    private static final BigDecimal TWO = new BigDecimal("2");
    private static final BigDecimal USUAL_STEP = new BigDecimal("0.001");
    /** Pitch diameters are worked out to a tenth of a micrometre here. */
    private static final BigDecimal OF_A_THREAD = new BigDecimal("0.0003");

    private static final BigDecimal OF_WHAT_IS_ROUNDED = new BigDecimal("0.000005");

    /** Between these a reading over wires is not far off. */
    private static final BigDecimal LEAST_OF_A_THREAD = new BigDecimal("7.8");

    private static final BigDecimal MOST_OF_A_THREAD = new BigDecimal("12.8");

    private final List<Facts> plan;
    private final List<Entry> entries;
    private final Counting counting;
    private final Oracle oracle;

    CutOracle(List<Facts> plan, List<Entry> entries) {
        this.plan = plan;
        this.entries = entries;
        this.counting = new Counting(entries);
        this.oracle = new Oracle(plan, entries);
    }

    /** Whether a step of that kind may be cut now. */
    boolean mayCut(Facts step) {
        return !(step.what() instanceof Facts.Size || step.what() instanceof Facts.Thread)
                || allRead(step) && warm(step) && rootKnown(step)
                || signed(step);
    }

    /** What is wrong with an amount for a step; absent where nothing is. */
    Optional<String> against(Facts step, Length change) {
        if (!warm(step) || !allRead(step) && !signed(step)) {
            return Optional.of("is given too early");
        }
        BigDecimal cut = change.millimetres();
        return step.what() instanceof Facts.Size size
                ? ofSize(step, size, cut)
                : ofThread(step, (Facts.Thread) step.what(), cut);
    }

    private Optional<String> ofSize(Facts step, Facts.Size size, BigDecimal change) {
        BigDecimal off = size.isOutside() ? change.negate() : change;
        BigDecimal one = step(size);
        if (off.signum() <= 0 || !size.cutAgain()) {
            return Optional.of("takes no metal off that may be taken");
        }
        if (off.remainder(one).signum() != 0) {
            return Optional.of("cannot be typed");
        }
        BigDecimal sides = size.kind().equals("depth") ? BigDecimal.ONE : TWO;
        if (size.cuts()
                .least()
                .filter(least -> off.compareTo(least.multiply(sides)) < 0)
                .isPresent()) {
            return Optional.of("lets the tool rub");
        }
        if (flanks(step)
                .filter(room -> off.compareTo(room.add(OF_A_THREAD)) > 0)
                .isPresent()) {
            return Optional.of("takes the pitch diameter under");
        }
        return inside(
                bound(oracle.read(step, size), size.combine()),
                change,
                size.lower().map(size.guard()::add),
                size.upper().map(upper -> upper.subtract(size.guard())),
                hair(size));
    }

    /** What is wrong with what is said may come off at the most; absent where nothing is. */
    Optional<String> againstTheMost(Facts step, Optional<Length> most) {
        if (!(step.what() instanceof Facts.Size size)) {
            Facts.Thread thread = (Facts.Thread) step.what();
            return againstTheMost(
                    most,
                    Optional.of(oracle.pitchDiameters(step).stream()
                            .min(BigDecimal::compareTo)
                            .orElseThrow()
                            .subtract(thread.lower())
                            .subtract(thread.guard())),
                    counted(USUAL_STEP),
                    OF_A_THREAD);
        }
        Stream<BigDecimal> bound = bound(oracle.read(step, size), size.combine()).stream();
        Optional<BigDecimal> room = size.isOutside()
                ? size.lower()
                        .map(lower ->
                                bound.min(BigDecimal::compareTo).orElseThrow().subtract(lower))
                : size.upper()
                        .map(upper ->
                                upper.subtract(bound.max(BigDecimal::compareTo).orElseThrow()));
        Optional<BigDecimal> flanks = flanks(step);
        return againstTheMost(
                most,
                Stream.concat(room.map(left -> left.subtract(size.guard())).stream(), flanks.stream())
                        .min(BigDecimal::compareTo),
                step(size),
                flanks.map(any -> OF_A_THREAD).orElse(hair(size)));
    }

    /** What may come off the pitch diameter over a root; absent where none lies over it, or it is not known. */
    private Optional<BigDecimal> flanks(Facts root) {
        return plan.stream()
                .filter(step -> step.what() instanceof Facts.Thread thread && thread.minorStep() == root.number())
                .findFirst()
                .filter(this::isKnown)
                .map(step -> oracle.pitchDiameters(step).stream()
                        .min(BigDecimal::compareTo)
                        .orElseThrow()
                        .subtract(((Facts.Thread) step.what()).lower())
                        .subtract(((Facts.Thread) step.what()).guard()));
    }

    private boolean isKnown(Facts wires) {
        BigDecimal root = oracle.root((Facts.Thread) wires.what()).orElse(MOST_OF_A_THREAD);
        return allRead(wires)
                && counting.readings(wires).values().stream()
                        .allMatch(read -> read.figure().compareTo(LEAST_OF_A_THREAD) > 0
                                && read.figure().compareTo(MOST_OF_A_THREAD) < 0
                                && ThreadOracle.isOffTheRoot(read, root));
    }

    private static Optional<String> againstTheMost(
            Optional<Length> most, Optional<BigDecimal> room, BigDecimal one, BigDecimal hair) {
        if (most.isEmpty() || room.isEmpty()) {
            return most.isPresent() == room.isPresent() ? Optional.empty() : Optional.of("has room " + room);
        }
        BigDecimal cut = most.get().millimetres();
        boolean past = cut.compareTo(room.get().max(BigDecimal.ZERO).add(hair)) > 0;
        boolean oneMore = cut.add(one).compareTo(room.get().subtract(hair)) <= 0;
        return past || oneMore || cut.remainder(one).signum() != 0 ? Optional.of("has room " + room) : Optional.empty();
    }

    private static BigDecimal hair(Facts.Size size) {
        return size.warm() || size.combine().equals("mean") ? OF_WHAT_IS_ROUNDED : BigDecimal.ZERO;
    }

    /** The least that can be typed, on the size. */
    private BigDecimal step(Facts.Size size) {
        BigDecimal step = size.cuts().step().orElse(USUAL_STEP);
        return size.isRound() ? counted(step) : step;
    }

    private Optional<String> ofThread(Facts step, Facts.Thread thread, BigDecimal change) {
        if (change.signum() >= 0) {
            return Optional.of("takes no metal off that may be taken");
        }
        if (change.remainder(counted(USUAL_STEP)).signum() != 0) {
            return Optional.of("cannot be typed");
        }
        return inside(
                oracle.pitchDiameters(step),
                change,
                Optional.of(thread.lower().add(thread.guard())),
                Optional.of(thread.upper().subtract(thread.guard())),
                OF_A_THREAD);
    }

    private static List<BigDecimal> bound(List<BigDecimal> sizes, String combine) {
        return switch (combine) {
            case "mean" ->
                List.of(sizes.stream()
                        .reduce(BigDecimal.ZERO, BigDecimal::add)
                        .divide(BigDecimal.valueOf(sizes.size()), 12, RoundingMode.HALF_EVEN));
            case "largest" -> List.of(sizes.stream().max(BigDecimal::compareTo).orElseThrow());
            case "smallest" -> List.of(sizes.stream().min(BigDecimal::compareTo).orElseThrow());
            default -> sizes;
        };
    }

    private static Optional<String> inside(
            List<BigDecimal> bound,
            BigDecimal change,
            Optional<BigDecimal> least,
            Optional<BigDecimal> most,
            BigDecimal hair) {
        boolean inside = bound.stream()
                .map(change::add)
                .allMatch(size -> least.map(low -> size.compareTo(low.subtract(hair)) >= 0)
                                .orElse(true)
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

    private boolean rootKnown(Facts step) {
        return !(step.what() instanceof Facts.Thread thread)
                || oracle.root(thread).isPresent();
    }

    private boolean warm(Facts step) {
        return !(step.what() instanceof Facts.Size size)
                || !size.warm()
                || counting.temperatures(step).size() == 2;
    }

    boolean signed(Facts step) {
        boolean signed = false;
        for (Entry entry : counting.counting(step)) {
            Event event = entry.event();
            if (event instanceof StepEvent.CutOnThese cut && cut.step() == step.number()) {
                signed = true;
            } else if (counting.changes(entry, step.number())
                    || event instanceof StepEvent.GaugeSet set && set.step() == step.number()
                    || event instanceof StepEvent.GaugeChosen chosen && chosen.step() == step.number()
                    || event instanceof StepEvent.DispositionSigned disposed && disposed.step() == step.number()) {
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
        return entries.stream()
                .flatMap(entry -> entry.event() instanceof ShopEvent.MachineKnown known
                        ? Optional.of(known.register()).stream()
                        : Optional.<Register>empty().stream())
                .reduce((earlier, later) -> later);
    }
}
