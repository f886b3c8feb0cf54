package org.tenthwise.model.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.Step;

/**
 * One run, as its entries tell it. It never changes: with one more entry it is another run, which shares with this one
 * what was sorted out of the entries before.
 */
public final class Run {

    /** Where in {@link #byStep} those stand that belong to no step. */
    private static final int NO_STEP = 0;

    private final List<Entry> entries;
    /** What happened at each step, what of it was struck out too. */
    private final Map<Integer, List<Entry>> byStep;

    private final Map<Long, Pass.Struck> struck;

    /** @param entries of this run only, in the order of the ledger; the first is {@link Event.Begun} */
    public Run(List<Entry> entries) {
        this(List.copyOf(entries), new HashMap<>(), new HashMap<>());
        if (entries.isEmpty() || !(entries.get(0).event() instanceof Event.Begun)) {
            throw new IllegalArgumentException("A run starts with its beginning");
        }
        this.entries.forEach(this::sort);
    }

    private Run(List<Entry> entries, Map<Integer, List<Entry>> byStep, Map<Long, Pass.Struck> struck) {
        this.entries = entries;
        this.byStep = byStep;
        this.struck = struck;
    }

    /** The same with one more entry behind the last. */
    public Run with(Entry entry) {
        List<Entry> more = new ArrayList<>(entries);
        more.add(entry);
        Run next = new Run(List.copyOf(more), new HashMap<>(byStep), new HashMap<>(struck));
        next.byStep.computeIfPresent(next.step(entry).orElse(NO_STEP), (step, before) -> new ArrayList<>(before));
        next.sort(entry);
        return next;
    }

    private void sort(Entry entry) {
        byStep.computeIfAbsent(step(entry).orElse(NO_STEP), first -> new ArrayList<>())
                .add(entry);
        if (entry.event() instanceof Event.StruckOut out) {
            struck.putIfAbsent(out.entry(), new Pass.Struck(entry, out.reason()));
        }
    }

    public List<Entry> entries() {
        return entries;
    }

    /** The step an entry of the run belongs to; what strikes another out belongs to the step of that one. */
    public Optional<Integer> step(Entry entry) {
        return entry.event() instanceof Event.StruckOut out
                ? entry(out.entry()).map(Entry::event).flatMap(Event::at)
                : entry.event().at();
    }

    /** The entry at a place in the ledger; absent where that is none of this run. */
    public Optional<Entry> entry(long seq) {
        int at = place(seq);
        return at < entries.size() && entries.get(at).seq() == seq ? Optional.of(entries.get(at)) : Optional.empty();
    }

    /** How many entries stand before a place in the ledger. */
    private int place(long seq) {
        int from = 0;
        int to = entries.size();
        while (from < to) {
            int middle = (from + to) / 2;
            if (entries.get(middle).seq() < seq) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return from;
    }

    private List<Entry> ofNoStep() {
        return at(NO_STEP);
    }

    List<Entry> at(int step) {
        return byStep.getOrDefault(step, List.of());
    }

    /** What happened at a step and at those that can change what is found there, in the order of the ledger. */
    private List<Entry> around(Step step) {
        List<Integer> touchedBy = step.check().touchedBy();
        return touchedBy.isEmpty()
                ? at(step.number())
                : Stream.concat(Stream.of(step.number()), touchedBy.stream())
                        .distinct()
                        .flatMap(number -> at(number).stream())
                        .sorted(Comparator.comparing(Entry::seq))
                        .toList();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Run run && entries.equals(run.entries);
    }

    @Override
    public int hashCode() {
        return entries.hashCode();
    }

    @Override
    public String toString() {
        return entries.toString();
    }

    public String id() {
        return entries.get(0).run();
    }

    public Event.Begun begun() {
        return (Event.Begun) entries.get(0).event();
    }

    /** How the register of its machine counts; absent until somebody says so. */
    public Optional<Register> register() {
        return machineKnown().map(ShopEvent.MachineKnown::register);
    }

    /** The aim that is usual on its machine; absent until somebody says so. */
    public Optional<Aim.ByLimits> usualAim() {
        return machineKnown().map(ShopEvent.MachineKnown::usual);
    }

    /** What was said last of the machine the run was begun on. */
    public Optional<ShopEvent.MachineKnown> machineKnown() {
        return last(event ->
                event instanceof ShopEvent.MachineKnown known && known.machine().equals(begun().machine())
                        ? Optional.of(known)
                        : Optional.empty());
    }

    /** All passes of a step, the one in hand last; at least one. */
    public List<Pass> passes(Step step) {
        return Passes.of(step, this, around(step));
    }

    /** The pass in hand. */
    public Pass pass(Step step) {
        List<Pass> passes = passes(step);
        return passes.get(passes.size() - 1);
    }

    /** The run as it stood before {@code entry}, which is not its first. */
    public Run before(Entry entry) {
        return new Run(entries.subList(0, place(entry.seq())));
    }

    /** Every temperature of the run, whatever the step, in the order they were taken. */
    public Stream<Pass.Temperature> temperatures() {
        return entries.stream()
                .flatMap(entry -> entry.event() instanceof StepEvent.TemperatureTaken taken
                        ? Stream.of(new Pass.Temperature(
                                entry, taken.of(), taken.read(), Optional.ofNullable(struck.get(entry.seq()))))
                        : Stream.empty());
    }

    /** Everything that was remarked, in the order it was entered. */
    public List<Remark> remarks() {
        return entries.stream().map(Remark::of).flatMap(Optional::stream).toList();
    }

    /** Doubts and notes about a step, in the order they were entered. */
    public List<Remark> doubtsAndNotes(Step step) {
        return at(step.number()).stream()
                .map(Remark::of)
                .flatMap(Optional::stream)
                .filter(remark -> remark.kind() != Remark.Kind.CUT_ON_THESE)
                .toList();
    }

    /** The gauges of the run and what they were set on. */
    public RunGauges gauges() {
        return new RunGauges(this);
    }

    /** By what certificates they were calibrated, and until when. */
    public RunCalibrations calibrations() {
        return new RunCalibrations(this);
    }

    List<Entry> calibrationsKnown() {
        return ofNoStep().stream()
                .filter(entry -> entry.event() instanceof ShopEvent.CalibrationKnown)
                .toList();
    }

    /** Every disposition that was ever signed for a step, in force or lapsed. */
    public List<Disposing> dispositions(Step step) {
        return Disposing.of(step, this, around(step));
    }

    public Optional<Event.Closed> closed() {
        return last(event -> event instanceof Event.Closed closed ? Optional.of(closed) : Optional.empty());
    }

    /** The last entry that changed what a signature is for; more than who signed, noted, doubted or took over. */
    public Entry lastChange() {
        return entries.stream()
                .filter(entry -> Signature.changesAFinding(entry.event()))
                .reduce((before, after) -> after)
                .orElse(entries.get(0));
    }

    /** Who signed what, in the order it was signed; closing is one of them. */
    public List<Signature> signatures() {
        return Signature.of(entries);
    }

    /** Whether {@code person} read anything in this run; who enters a paper has measured nothing. */
    public boolean wasReadBy(String person) {
        return entries.stream()
                .anyMatch(entry -> entry.event() instanceof StepEvent.TakenInPass
                        && !(entry.event() instanceof StepEvent.DocumentGiven)
                        && Person.isSame(entry.by(), person));
    }

    /** Who has the run in hand: who began it, or the last it was handed over to. */
    public String by() {
        return last(event -> event instanceof Event.HandedOver over ? Optional.of(over.to()) : Optional.empty())
                .orElse(entries.get(0).by());
    }

    /** The last thing done in the run; that a store was taken over, or the run signed by a station, is none. */
    public Entry last() {
        return entries.stream()
                .filter(entry -> !(entry.event() instanceof Event.TakenOver || entry.event() instanceof Event.Sealed))
                .reduce((earlier, later) -> later)
                .orElseThrow();
    }

    /** The entries of kinds this release does not know. Where there are any, nobody can tell here what stands. */
    public List<Entry> unknown() {
        return ofNoStep().stream()
                .filter(entry -> entry.event() instanceof Event.Unknown)
                .toList();
    }

    /** Why an entry was struck out for itself, by its place in the ledger; absent where it was not. */
    public Optional<Pass.Struck> struck(long seq) {
        return Optional.ofNullable(struck.get(seq));
    }

    private <T> Optional<T> last(Function<Event, Optional<T>> pick) {
        return ofNoStep().stream()
                .map(Entry::event)
                .map(pick)
                .flatMap(Optional::stream)
                .reduce((earlier, later) -> later);
    }
}
