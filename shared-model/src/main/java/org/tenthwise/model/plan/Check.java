package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.gauge.CertifiedEnds;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.tolerance.Limits;

/**
 * What a step asks for. Kinds that measure have slots for readings; kinds that ask have questions.
 *
 * <p>What all kinds can be asked is a method here; what is done with each kind in its own way is a {@link Cases}, so
 * that a new kind does not compile until every one of them names it.
 */
public sealed interface Check
        permits AskedCheck, RunOutCheck, CheckOfDimension, PositionCheck, PlugFitCheck, CalculatedCheck, DocumentCheck {

    /** The word plans and files for programs have for the kind; a size goes by its feature. */
    String key();

    /** Room for the readings of one pass, in the order they are taken; empty for a kind that only asks. */
    List<Slot> slots();

    /** The same with what can be read instead or beside: the sweep of a run-out. */
    default List<Slot> everySlot() {
        return slots();
    }

    /** The slot with that key, of every slot; absent where there is none. */
    default Optional<Slot> slot(String key) {
        return everySlot().stream().filter(slot -> slot.key().equals(key)).findFirst();
    }

    /** Whether something is read; what only asks is judged by its answers. */
    default boolean isMeasured() {
        return !everySlot().isEmpty();
    }

    /** Whether nothing is taken at it, as it is worked out of what others found. */
    default boolean isTakenElsewhere() {
        return false;
    }

    /** The thread that wires are laid into, so that no reading is of the size itself; absent without wires. */
    default Optional<ScrewThread> underWires() {
        return Optional.empty();
    }

    /**
     * It as what is worked out of lengths that are read, so that no reading is of the size itself, nor in the unit of
     * the limits; absent for what is not.
     */
    default Optional<WorkedCheck> asWorked() {
        return Optional.empty();
    }

    /** The limits of a size that heat changes; absent for what it does not touch. */
    default Optional<Limits> underHeat() {
        return asSize().flatMap(CheckOfSize::limitsOfASize);
    }

    /** Whether its cut is typed into the register that counts across the axis. */
    default boolean isTurned() {
        return asSize().filter(size -> size.feature().isTurned()).isPresent();
    }

    /** How many alike it reads by itself, each against a place of its own: one for all but a pattern of holes. */
    default int readsAlike() {
        return 1;
    }

    /** Whether a reading of it may be zero or less: what an indicator shows, and what is counted from a datum. */
    default boolean readsBelowZero(Slot slot) {
        return asTurn().isPresent();
    }

    /**
     * What is read in a slot is written in, where that is another unit than that of the step: an angle beside lengths.
     */
    default Optional<Unit> unit(Slot slot) {
        return Optional.empty();
    }

    /** Questions answered by a tap, in the order they are asked; empty for a kind that only measures. */
    default List<Question> questions() {
        return List.of();
    }

    /** What it is measured or gauged with; absent for what is only confirmed or seen. */
    Optional<Means> means();

    /**
     * Numbers of the steps whose value this check uses, directly or through another: what was found here lapses when
     * one of them is measured anew.
     */
    List<Integer> restsOn();

    /**
     * Numbers of the steps that one tool cuts together with this one: what was found here lapses when one of them is
     * cut, though not when it is only measured.
     */
    default List<Integer> cutWith() {
        return List.of();
    }

    /** The same, cut together with later steps that name it; as it is for a kind that none can name. */
    default Check cutWith(List<Integer> steps) {
        return this;
    }

    /** Numbers of the steps whose entries can change what is found here, without its own. */
    default List<Integer> touchedBy() {
        return Stream.concat(restsOn().stream(), cutWith().stream()).distinct().toList();
    }

    /** The limits it is judged against; absent for a kind that only asks. */
    Optional<Limits> judgedAgainst();

    /**
     * By what of its readings it is judged, in a word for files that programs read: by each, by a size made of them, or
     * by what they show together; absent for a kind that only asks.
     */
    Optional<String> judgedBy();

    /** Whether it comes to a size, or to several that one can work with; not so a fit, nor what only asks. */
    default boolean comesToASize() {
        return judgedAgainst().isPresent();
    }

    /** Whether none of what it comes to lies below zero, and zero is best: how far something runs out or lies off. */
    default boolean isBestAtZero() {
        return false;
    }

    /** What such a check is to the drawing where the plan is silent. */
    default StepClass usualClass() {
        return StepClass.DRAWING;
    }

    /** Whether it is asked in its turn; what is proven elsewhere is answered whenever its paper is there. */
    default boolean isInOrder() {
        return true;
    }

    /** The ends of the limit gauge it is tried with, by its certificate; absent where none are known. */
    default Optional<CertifiedEnds> certifiedEnds() {
        return Optional.empty();
    }

    /**
     * Whether it is shown to be right by answers that are as they must be: not by ends that let through what is out.
     */
    default boolean isProvenByPassing() {
        return certifiedEnds().filter(ends -> !ends.past().isEmpty()).isEmpty();
    }

    /** It as what a paper proves; absent for what none does. */
    default Optional<DocumentCheck> asDocument() {
        return Optional.empty();
    }

    /** It as a dimension of the drawing read at places; absent for what is none. */
    default Optional<CheckOfDimension> asDimension() {
        return Optional.empty();
    }

    /** It as a size of the work that is cut; absent for what is none. */
    default Optional<CheckOfSize> asSize() {
        return Optional.empty();
    }

    /** It as what is read over a turn; absent for what is not. */
    default Optional<RunOutCheck> asTurn() {
        return Optional.empty();
    }

    /** What {@code cases} has for this kind. */
    <R> R match(Cases<R> cases);

    /** Something for each kind of check. */
    interface Cases<R> {

        R asked(AskedCheck check);

        R runOut(RunOutCheck check);

        R size(SizeCheck check);

        R angle(AngleCheck check);

        R indicated(IndicatedCheck check);

        R position(PositionCheck check);

        R scale(ScaleCheck check);

        R worked(WorkedCheck check);

        R plugFit(PlugFitCheck check);

        R calculated(CalculatedCheck check);

        R overWires(OverWiresCheck check);

        R document(DocumentCheck check);
    }

    /**
     * The gauge a check is made with.
     *
     * @param gauge mark of the gauge the plan expects; absent if any of the kind will do
     * @param reference nominal size of the master, or of the wires, where the kind needs one
     * @param uncertainty of a size measured so; absent if the plan names none
     * @param resolution the least step its kind shows; absent where the plan does not say
     */
    record Means(
            GaugeKind kind,
            Optional<String> gauge,
            Optional<Written> reference,
            Optional<Uncertainty> uncertainty,
            Optional<Written> resolution) {

        /** Nobody says how finely it is read. */
        public Means(
                GaugeKind kind,
                Optional<String> gauge,
                Optional<Written> reference,
                Optional<Uncertainty> uncertainty) {
            this(kind, gauge, reference, uncertainty, Optional.empty());
        }

        /** Of unknown uncertainty. */
        public Means(GaugeKind kind, Optional<String> gauge, Optional<Written> reference) {
            this(kind, gauge, reference, Optional.empty(), Optional.empty());
        }
    }
}
