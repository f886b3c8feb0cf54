package org.tenthwise.app.session;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;

/**
 * The gauge of a step while it is being set: which one, its sense, its master or wires, its zero.
 *
 * <p>Which gauge was taken is kept in the ledger at once, so that nothing is read under the gauge of before; what is
 * typed of it is held here, step by step, until it is whole, and kept in the ledger then. A sense that was told makes
 * the setting whole only once a figure it gives was confirmed.
 */
final class GaugeAtHand {

    /** By how much the bore is smaller that a sense is put into figures by: enough to be seen on any dial. */
    private static final Map<Unit, BigDecimal> SMALLER =
            Map.of(Unit.MILLIMETRE, new BigDecimal("0.010"), Unit.INCH, new BigDecimal("0.0005"));

    private final RunBook book;
    private final GaugeRack rack;
    private final CertifiedSizes sizes;
    private final CalibrationAtHand calibration;
    private final Map<Integer, HalfSet> halfSet = new HashMap<>();

    GaugeAtHand(RunBook book, GaugeRack rack) {
        this.book = book;
        this.rack = rack;
        this.sizes = new CertifiedSizes(book);
        this.calibration = new CalibrationAtHand(book);
    }

    /** @param reference mark of its master or wires; absent where they go by their nominal size */
    void choose(Step step, String mark, Optional<String> reference) throws CouldNotSave {
        halfSet.remove(step.number());
        if (isSet(step) || !liesReady(step, mark, reference)) {
            book.add(new StepEvent.GaugeChosen(step.number(), mark, reference));
        }
    }

    /** Whether it is asked for by itself, so that there is nothing to keep. */
    private boolean liesReady(Step step, String mark, Optional<String> reference) {
        StepEvent.GaugeChosen taken = new StepEvent.GaugeChosen(step.number(), mark, reference);
        return book.run()
                .gauges()
                .chosen(step.number())
                .map(taken::equals)
                .orElseGet(() -> reference.isEmpty() && means(step).gauge().equals(Optional.of(mark)));
    }

    /**
     * The gauge of the step is to be set anew, on the same master: what was set of it so far is not asked back.
     *
     * @param senseToo whether its sense is asked as well, as if the shop did not know it
     */
    void setAnew(Step step, boolean senseToo) throws CouldNotSave {
        Optional<String> reference = book.run()
                .gauges()
                .setting(step.number())
                .flatMap(Setting::reference)
                .filter(mark -> !means(step).reference().map(Written::text).equals(Optional.of(mark)));
        choose(step, book.run().gauges().mark(step).orElseThrow(), reference);
        halfSet.put(step.number(), senseToo ? HalfSet.SENSE_TOO : HalfSet.BY_HAND);
    }

    /** What must be known of the gauge before it can be read; absent once it is set or needs no setting. */
    Optional<Prompt> asked(Step step) {
        if (step.check().means().isEmpty() || isSet(step)) {
            return Optional.empty();
        }
        Check.Means means = means(step);
        Optional<String> mark = book.run().gauges().mark(step);
        if (mark.isEmpty()) {
            return Optional.of(new Prompt.WhichGauge(means.kind(), rack.ofKind(means.kind())));
        }
        if (means.kind().reference() == GaugeKind.Reference.NONE) {
            return Optional.empty();
        }
        HalfSet half = half(step);
        boolean compares = means.kind().reference() == GaugeKind.Reference.MASTER;
        if (compares && sense(step, mark.get()).isEmpty()) {
            return Optional.of(new Prompt.WhichSense(mark.get(), means.kind()));
        }
        if (half.certified().isEmpty()) {
            String reference = reference(means, step);
            Written nominal = means.reference().orElseThrow();
            Optional<CertifiedSizes.Known> known = sizes.known(mark.get(), means.kind(), reference, nominal.unit());
            return known.filter(size -> !half.byHand() && half.told().isEmpty())
                    .<Prompt>map(before -> new Prompt.LiesReady(
                            means.kind().reference(),
                            reference,
                            before.size(),
                            before.part(),
                            Optional.of(zero(step)).filter(zero -> compares)))
                    .or(() -> Optional.of(new Prompt.Certified(
                            means.kind().reference(), reference, nominal, known.map(CertifiedSizes.Known::size))));
        }
        return Optional.of(
                half.zero().isEmpty()
                        ? new Prompt.Zero(half.certified().get(), zero(step))
                        : inFigures(onMaster(step, half.zero().get()), rack.find(mark.get(), means.kind())));
    }

    private static Prompt inFigures(Setting onMaster, Optional<Gauge> known) {
        Written master = onMaster.certified().orElseThrow();
        Written zero = onMaster.zero().orElseThrow();
        ReadingDirection sense = onMaster.gauge().sense().orElseThrow();
        BigDecimal smaller = SMALLER.get(master.unit());
        return new Prompt.SenseInFigures(
                onMaster.gauge().id(),
                Written.of(zero.figure().subtract(smaller.multiply(BigDecimal.valueOf(sense.sign()))), zero.unit()),
                Written.of(master.figure().subtract(smaller), master.unit()),
                known.flatMap(Gauge::sense).filter(before -> before != sense).isPresent(),
                onMaster.gauge().kind().isToldByItsPlunger());
    }

    private Written zero(Step step) {
        return new Written("0", book.plan().unit(step));
    }

    /** What it was set on before is not asked about again: it is typed, or taken size by size. */
    void byHand(Step step) {
        halfSet.put(step.number(), HalfSet.BY_HAND);
    }

    /** The setting that the next reading or answer brings with it: that of a gauge that reads the size itself. */
    Optional<Setting> settingToMake(Step step) {
        if (step.check().means().isEmpty() || isSet(step)) {
            return Optional.empty();
        }
        return Optional.of(Setting.direct(new Gauge(
                book.run().gauges().mark(step).orElseThrow(), means(step).kind(), Optional.empty())));
    }

    /** A reading or an answer, with the setting it brings with it before it, and what the shop knows of its gauge. */
    List<Event> withItsSetting(Step step, Event event) {
        Optional<Setting> toMake = settingToMake(step);
        return Stream.<Stream<? extends Event>>of(
                        toMake.or(() -> book.run().gauges().setting(step.number())).stream()
                                .map(setting -> GaugeOrMaster.of(setting.gauge()))
                                .flatMap(calibration::comesWith),
                        toMake.stream().map(setting -> new StepEvent.GaugeSet(step.number(), setting)),
                        Stream.of(event))
                .<Event>flatMap(Function.identity())
                .toList();
    }

    /** By what certificates the gauge of a step, and what it is set on, will be calibrated at its next reading. */
    List<CalibratedHere> calibrated(Step step) {
        Optional<String> mark = book.run().gauges().mark(step);
        if (step.check().means().isEmpty() || mark.isEmpty()) {
            return List.of();
        }
        GaugeOrMaster gauge = GaugeOrMaster.gauge(mark.get(), means(step).kind());
        Stream<CalibratedHere> under = means(step).kind().reference() == GaugeKind.Reference.NONE
                ? Stream.empty()
                : Stream.of(book.run()
                        .gauges()
                        .setting(step.number())
                        .flatMap(GaugeOrMaster::under)
                        .map(set -> new CalibratedHere(set, calibration.now(set)))
                        .orElseGet(() -> {
                            GaugeOrMaster master = GaugeOrMaster.master(reference(means(step), step));
                            return new CalibratedHere(master, calibration.next(master));
                        }));
        return Stream.concat(Stream.of(new CalibratedHere(gauge, calibration.next(gauge))), under)
                .toList();
    }

    /** By what certificate one of them is calibrated, from now on and for the shop. */
    void calibrated(GaugeOrMaster what, Calibration as, boolean putsRight) throws CouldNotSave {
        calibration.tell(what, as, putsRight);
    }

    /** What was typed and not kept is forgotten, in every step. */
    void forget() {
        halfSet.clear();
        sizes.forget();
    }

    void tellSense(Step step, ReadingDirection sense) {
        halfSet.put(step.number(), half(step).told(sense));
    }

    /** The size of the master, or of the wires, which are set with it. */
    void certify(Step step, Written size) throws CouldNotSave {
        Check.Means means = means(step);
        if (means.kind().reference() == GaugeKind.Reference.WIRES) {
            Gauge gauge = new Gauge(book.run().gauges().mark(step).orElseThrow(), means.kind(), Optional.empty());
            set(step, Setting.overWires(gauge, reference(means, step), size));
        } else {
            halfSet.put(step.number(), half(step).on(size));
        }
    }

    /** What the gauge reads on its master; sets it, unless its sense was told and is still to be confirmed. */
    void zero(Step step, Written zero) throws CouldNotSave {
        if (half(step).told().isPresent()) {
            halfSet.put(step.number(), half(step).reading(zero));
        } else {
            set(step, onMaster(step, zero));
        }
    }

    /** The figure is as the gauge shows it: its sense is known to the shop, and it is set. */
    void confirm(Step step) throws CouldNotSave {
        Setting setting = onMaster(step, half(step).zero().orElseThrow());
        boolean known = rack.find(setting.gauge().id(), setting.gauge().kind()).equals(Optional.of(setting.gauge()));
        List<Event> told = known ? List.of() : List.of(new ShopEvent.GaugeKnown(setting.gauge()));
        book.add(Stream.of(book.told(told), book.happening(whole(step, setting)))
                .flatMap(List::stream)
                .toList());
        halfSet.remove(step.number());
    }

    /** The gauge shows it the other way round: the figure is asked about once more, as it is then. */
    void turnRound(Step step) {
        HalfSet half = half(step);
        halfSet.put(step.number(), half.told(half.told().orElseThrow().opposite()));
    }

    private void set(Step step, Setting setting) throws CouldNotSave {
        book.add(book.happening(whole(step, setting)));
        halfSet.remove(step.number());
    }

    /** A setting, with what the shop knows of its gauge and of what it was set on. */
    private List<Event> whole(Step step, Setting setting) {
        return Stream.concat(calibration.comesWith(setting), Stream.of(new StepEvent.GaugeSet(step.number(), setting)))
                .toList();
    }

    private Setting onMaster(Step step, Written zero) {
        Check.Means means = means(step);
        String mark = book.run().gauges().mark(step).orElseThrow();
        return Setting.onMaster(
                new Gauge(mark, means.kind(), sense(step, mark)),
                reference(means, step),
                half(step).certified().orElseThrow(),
                zero);
    }

    private Optional<ReadingDirection> sense(Step step, String mark) {
        HalfSet half = half(step);
        return half.senseToo()
                ? half.told()
                : half.told().or(() -> rack.find(mark, means(step).kind()).flatMap(Gauge::sense));
    }

    private HalfSet half(Step step) {
        return halfSet.getOrDefault(step.number(), HalfSet.NOTHING);
    }

    private String reference(Check.Means means, Step step) {
        return book.run()
                .gauges()
                .chosen(step.number())
                .flatMap(StepEvent.GaugeChosen::reference)
                .orElseGet(() -> means.reference().orElseThrow().text());
    }

    private boolean isSet(Step step) {
        return book.run().gauges().setting(step.number()).isPresent();
    }

    private static Check.Means means(Step step) {
        return step.check().means().orElseThrow();
    }
}
