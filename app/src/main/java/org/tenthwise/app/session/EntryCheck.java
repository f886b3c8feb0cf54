package org.tenthwise.app.session;

import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.model.compute.comparison.FromMaster;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Expected;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Plausible;
import org.tenthwise.model.record.Touch;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.verdict.VerdictKind;

/** What is said against a typed figure before it is kept. Nothing that no sum can be done with gets into the ledger. */
final class EntryCheck {

    /** The places a gauge shows. */
    private static final Map<Unit, Integer> SHOWN =
            Map.of(Unit.MILLIMETRE, 3, Unit.INCH, 4, Unit.DEGREE, 2, Unit.MINUTE_OF_ARC, 0, Unit.SECOND_OF_ARC, 0);

    private static final int SHOWN_ON_A_SCALE = 2;

    private final Plan plan;

    EntryCheck(Plan plan) {
        this.plan = plan;
    }

    /** Against the certified size of a master or of wires whose nominal is {@code nominal}. */
    Optional<Objection> certified(Step step, Written typed, Written nominal) {
        Length size = typed.length();
        if (size.signum() <= 0) {
            return Optional.of(new Objection(Objection.Kind.NOT_ABOVE_ZERO, typed.text()));
        }
        return unfitWires(step, size)
                .or(() -> farOff(typed, plan.unit(step), List.of(Plausible.certified(nominal.length()))));
    }

    /** Against what a gauge reads on a master of that size. */
    Optional<Objection> zero(Step step, Written typed, Written certified) {
        return farOff(typed, plan.unit(step), Plausible.zero(certified.length()));
    }

    /**
     * Whether a figure nobody asked for is plainly the first reading of {@code step}: within a few tolerances of it.
     */
    boolean opens(Step step, String text, Optional<Setting> setting) {
        return Written.typed(text, plan.unit(step))
                .filter(typed -> Plausible.opening(plan, step.check(), setting)
                        .filter(expected -> expected.fits(typed.length()))
                        .isPresent())
                .isPresent();
    }

    /** Where a figure fits none of what is expected, the last of them is named, in {@code unit}. */
    private static Optional<Objection> farOff(Written typed, Unit unit, List<Expected> expected) {
        Length figure = typed.length();
        boolean fits = expected.isEmpty() || expected.stream().anyMatch(one -> one.fits(figure));
        return fits
                ? Optional.empty()
                : Optional.of(new Objection(
                        Objection.Kind.FAR_OFF,
                        marked(typed.text(), typed.unit()),
                        about(expected.get(expected.size() - 1).about(), unit)));
    }

    /** To the places a gauge shows. */
    private static String about(Length length, Unit unit) {
        int places = SHOWN.getOrDefault(unit, SHOWN_ON_A_SCALE);
        return marked(unit.text(length.in(unit).setScale(places, RoundingMode.HALF_UP)), unit);
    }

    /** A length goes without its unit, an angle or a figure of a scale never does. */
    private static String marked(String figure, Unit unit) {
        return unit.isOfLength() ? figure : unit.behind(figure);
    }

    private static Optional<Objection> unfitWires(Step step, Length size) {
        try {
            step.check().underWires().ifPresent(thread -> new MeasurementOverWires(thread, size));
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of(Objection.noSum(e));
        }
    }

    /** Against a reading with a gauge set as {@code setting} says. */
    Optional<Objection> reading(Step step, Slot slot, Written typed, Optional<Setting> setting, Pass pass) {
        Length read = typed.length();
        Optional<Length> zero = setting.flatMap(Setting::zero).map(Written::length);
        boolean signed = zero.isPresent() || step.check().readsBelowZero(slot);
        if (!signed && read.signum() <= 0) {
            return Optional.of(new Objection(Objection.Kind.NOT_ABOVE_ZERO, typed.text()));
        }
        if (zero.isPresent()
                && FromMaster.size(
                                        setting.get().certified().orElseThrow().length(),
                                        setting.get().gauge().sense().orElseThrow(),
                                        read,
                                        zero.get())
                                .signum()
                        <= 0) {
            return Optional.of(new Objection(Objection.Kind.NO_SUCH_SIZE, typed.text()));
        }
        boolean possible = signed
                || step.check()
                        .asSize()
                        .map(size -> read.isAbove(Touch.most(size.contact())))
                        .orElse(true);
        if (!possible) {
            return Optional.of(new Objection(Objection.Kind.NO_SUCH_SIZE, typed.text()));
        }
        boolean sweeps = step.check()
                .asDimension()
                .flatMap(CheckOfDimension::asIndicated)
                .isPresent();
        List<Length> before = pass.standing().values().stream()
                .filter(reading -> !sweeps || reading.setting().equals(setting))
                .map(reading -> reading.typed().length())
                .toList();
        return farOff(
                typed,
                plan.unit(step, slot),
                Plausible.reading(plan, step.check(), Optional.of(slot), setting, before).stream()
                        .toList());
    }

    /**
     * Against a highest and a lowest over a turn that are the wrong way round. @param setting of the gauge it is taken
     * with
     */
    static Optional<Objection> turn(Step step, Pass pass, Optional<Setting> setting, StepEvent.ReadingTaken taken) {
        Length read = taken.typed().length();
        return step.check()
                .asTurn()
                .filter(turn -> turn.bySection().stream()
                        .anyMatch(at -> taken.slot().equals(at.lowest().key())
                                        && length(pass, at.highest(), setting)
                                                .filter(read::isAbove)
                                                .isPresent()
                                || taken.slot().equals(at.highest().key())
                                        && length(pass, at.lowest(), setting)
                                                .filter(read::isBelow)
                                                .isPresent()))
                .map(turn -> new Objection(
                        Objection.Kind.WRONG_WAY_ROUND, taken.typed().text()));
    }

    /**
     * Against a highest and a lowest over a sweep that are the wrong way round, or one: a needle that stands still
     * touches nothing, or nothing was swept. Turned over, a symmetry may read either way, and the same where it is
     * right.
     */
    static Optional<Objection> sweep(Step step, Run run, StepEvent.ReadingTaken taken) {
        return step.check()
                .asDimension()
                .flatMap(CheckOfDimension::asIndicated)
                .filter(indicated -> indicated.of().isHighestFirst())
                .flatMap(indicated -> indicated.slots().stream()
                        .filter(slot -> slot.key().equals(taken.slot()))
                        .findFirst()
                        .flatMap(slot -> asItIsSet(step, run, indicated.opposite(slot))
                                .flatMap(other -> sweep(slot, taken.typed(), other))));
    }

    private static Optional<Length> asItIsSet(Step step, Run run, Slot slot) {
        return Optional.ofNullable(run.pass(step).standing().get(slot.key()))
                .filter(reading -> run.gauges().isAsItIsSet(reading.entry(), step))
                .map(reading -> reading.typed().length());
    }

    private static Optional<Objection> sweep(Slot slot, Written typed, Length other) {
        boolean isHighest = slot.repeat() == 1;
        Length read = typed.length();
        if (isHighest ? read.isBelow(other) : read.isAbove(other)) {
            return Optional.of(new Objection(Objection.Kind.WRONG_WAY_ROUND, typed.text()));
        }
        return read.compareTo(other) == 0
                ? Optional.of(new Objection(Objection.Kind.STOOD_STILL, typed.text()))
                : Optional.empty();
    }

    /** Read with another gauge, it says nothing of one read with this. */
    private static Optional<Length> length(Pass pass, Slot slot, Optional<Setting> setting) {
        return Optional.ofNullable(pass.standing().get(slot.key()))
                .filter(reading -> reading.setting().equals(setting))
                .map(reading -> reading.typed().length());
    }

    /**
     * Against striking out an entry of a run: only what was read, answered or set can be, and once. What went with its
     * setting is struck out already.
     */
    static Optional<Objection> strikingOut(Run run, long entry) {
        boolean gone = run.struck(entry).isPresent()
                || run.gauges().settingsStruck().keySet().stream()
                        .flatMap(setting -> run.gauges().under(setting).stream())
                        .anyMatch(e -> e.seq() == entry);
        if (gone) {
            return Optional.of(Objection.of(Objection.Kind.ALREADY_STRUCK));
        }
        boolean strikable =
                run.entry(entry).map(Entry::event).filter(Event::canBeStruckOut).isPresent();
        return strikable ? Optional.empty() : Optional.of(Objection.of(Objection.Kind.NOT_ASKED_HERE));
    }

    /** Against a new pass: not where nothing was taken yet, nor for what follows by itself. */
    static Optional<Objection> again(Pass pass, StepEvent.PassBegun.Why why) {
        if (pass.isEmpty()) {
            return Optional.of(Objection.of(Objection.Kind.NOTHING_ASKED));
        }
        return why.isSaid() ? Optional.empty() : Optional.of(Objection.of(Objection.Kind.NOT_ASKED_HERE));
    }

    /** Against signing for a finding: not before it is found out, and no concession where none is needed. */
    static Optional<Objection> disposing(Finding finding, Disposition disposition) {
        VerdictKind standing = finding.verdict().standing();
        if (standing == VerdictKind.OPEN) {
            return Optional.of(Objection.of(Objection.Kind.STILL_OPEN));
        }
        return standing == VerdictKind.PASS
                        && (disposition == Disposition.USE_AS_IS || disposition == Disposition.CARRY_ON)
                ? Optional.of(Objection.of(Objection.Kind.PASSED))
                : Optional.empty();
    }

    /** Against entries no sum can be done with. */
    static Optional<Objection> sum(RunBook book, List<NewEntry> entries) {
        try {
            book.workOut(entries);
            return Optional.empty();
        } catch (IllegalArgumentException | ArithmeticException e) {
            return Optional.of(Objection.noSum(e));
        }
    }
}
