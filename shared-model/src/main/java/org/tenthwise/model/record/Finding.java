package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.fit.Clearance;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.verdict.Verdict;

/**
 * What one pass of one step comes to.
 *
 * <p>What all kinds can be asked is a method here; what is done with each kind in its own way is a {@link Cases}, so
 * that a new kind does not compile until every one of them names it.
 */
public sealed interface Finding
        permits AskedFinding,
                RunOutFinding,
                SizeFinding,
                PositionFinding,
                WorkedFinding,
                PlugFitFinding,
                OverWiresFinding,
                CalculatedFinding,
                DocumentFinding {

    BigDecimal TWICE = BigDecimal.valueOf(2);

    Step step();

    default Check check() {
        return step().check();
    }

    Verdict verdict();

    /** Readings, temperatures and answers still to come in this pass. */
    int missing();

    /** How many readings there are once none is missing, as far as it is known. */
    default int readingsInAll() {
        return check().slots().size();
    }

    /** The readings behind it that count; empty for one that only asks. */
    List<Measured> measured();

    /**
     * The one size judged; absent before there is one, for a plug fit, which is judged by two, and for what only asks.
     */
    Optional<Length> value();

    /**
     * What it comes to where another check is worked out of it: of every reading where each of them counts, else the
     * one judged; empty before there is any.
     */
    default List<Length> comesTo() {
        boolean each = check().asDimension()
                .filter(dimension -> dimension.combine() == Combine.EACH)
                .isPresent();
        return each
                ? measured().stream().map(Measured::value).toList()
                : value().stream().toList();
    }

    /** To how many places it is known by more than its readings, in the unit of its limits; 0 where by them alone. */
    default int places() {
        return 0;
    }

    /** The least and the greatest, where both must lie inside; empty before there are any, and anywhere else. */
    default List<Length> bothEnds() {
        return List.of();
    }

    /** The reading that decides; absent where several together do, or none is there. */
    default Optional<Measured> deciding() {
        return Optional.empty();
    }

    /** The greatest of what was read, where a rule lets it lie over the limit and another value decides. */
    default Optional<Measured> greatestBesideDeciding() {
        return Optional.empty();
    }

    /** The figure of a document that decides; absent where none does, and for what no document proves. */
    default Optional<Written> decidingFigure() {
        return Optional.empty();
    }

    /** The readings that one of those behind it rests on: itself, but where its size is worked out of several. */
    default List<Measured> readFor(Measured measured) {
        return List.of(measured);
    }

    /** Whether it is judged by one size; a plug fit is by two, and what only asks by none. */
    boolean isOfOneSize();

    /** The readings that are far off, or were made with a gauge whose setting is. */
    List<Measured> farOff();

    /**
     * Whether the readings are the sizes of the work, so that those of two passes tell what was cut between them: not
     * for a range, nor while something is still to be told that they hang on.
     */
    default boolean showsSizes() {
        return false;
    }

    /** Whether another step is still to be measured before anything here is proven. */
    boolean awaitsAnother();

    /** It as what was read over a turn; absent for what was not. */
    default Optional<RunOutFinding> asTurn() {
        return Optional.empty();
    }

    /** Whether a hand felt otherwise than is asked, whatever the figures say. */
    default boolean isFeltOtherwise() {
        return false;
    }

    /**
     * Places that the size judged is written with beyond those of its readings: none for what is read, and for what is
     * made of readings without a root.
     */
    default int placesMore() {
        return 0;
    }

    /** What the value may be, where something measured adds to its limit; absent for what its limits alone bind. */
    default Optional<Length> allowed() {
        return Optional.empty();
    }

    /** Least and maximum clearance of a fit; absent before both are measured, and for what is no fit. */
    default Optional<Clearance> clearance() {
        return Optional.empty();
    }

    /** What wires make a reading bigger than the size; absent without wires. */
    default Optional<Length> overWires(Measured measured) {
        return Optional.empty();
    }

    /**
     * Whether what is unproven could be proven by the same check read or tried once more: not on what is no datum, nor
     * by a gauge that lets through what is out.
     */
    default boolean provenByAnotherTry() {
        return true;
    }

    /** Whether there is metal to take and something else lets none be taken. */
    default boolean forbidsCutting() {
        return false;
    }

    /** The step to look at where this one is open or did not pass, as nothing is taken here; absent anywhere else. */
    default Optional<Integer> settledFirst() {
        return Optional.empty();
    }

    /** The step to be measured anew before a cut is offered here; absent where none need be. */
    default Optional<Integer> measuredFirst() {
        return Optional.empty();
    }

    /**
     * The verdict on one of the readings that count by itself; absent where a check judges several of them together.
     *
     * @param measured one of those behind the finding
     */
    default Optional<Verdict> alone(Measured measured) {
        return Optional.empty();
    }

    /** What may be cut next; absent where nothing may, or nobody can tell yet, and for what is not a size. */
    default Optional<Proposal> proposal() {
        return Optional.empty();
    }

    /** The same with another proposal; as it is where there can be none. */
    default Finding proposing(Optional<Proposal> proposed) {
        return this;
    }

    /** How far what it comes to may be from the true size, at k = 2; absent where the plan names no uncertainty. */
    default Optional<Length> expanded() {
        return check().means()
                .flatMap(Check.Means::uncertainty)
                .map(known -> known.expanded().length().times(TWICE).dividedBy(known.coverageFactor()));
    }

    /** What heat means to it; absent where the plan says nothing of heat, and for what it does not touch. */
    default Optional<TemperatureEffect> warmth() {
        return Optional.empty();
    }

    /** What {@code cases} has for this kind. */
    <R> R match(Cases<R> cases);

    /** Something for each kind of finding. */
    interface Cases<R> {

        R asked(AskedFinding finding);

        R runOut(RunOutFinding finding);

        R size(SizeFinding finding);

        R position(PositionFinding finding);

        R plugFit(PlugFitFinding finding);

        R calculated(CalculatedFinding finding);

        R overWires(OverWiresFinding finding);

        R document(DocumentFinding finding);

        R worked(WorkedFinding finding);
    }
}
