package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.fit.Clearance;
import org.tenthwise.model.plan.Check;
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
                PlugFitFinding,
                OverWiresFinding,
                DocumentFinding {

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

    /** The reading that decides; absent where several together do, or none is there. */
    Optional<Measured> deciding();

    /** The figure of a document that decides; absent where none does, and for what no document proves. */
    default Optional<Written> decidingFigure() {
        return Optional.empty();
    }

    /** Whether it is judged by one size; a plug fit is by two, and what only asks by none. */
    boolean isOfOneSize();

    /** The readings that are far off, or were made with a gauge whose setting is. */
    List<Measured> farOff();

    /**
     * Whether the readings are the sizes of the work, so that those of two passes tell what was cut between them: not
     * for a range, nor while something is still to be told that they hang on.
     */
    boolean showsSizes();

    /** Whether another step is still to be measured before anything here is proven. */
    boolean awaitsAnother();

    /** It as what was read over a turn; absent for what was not. */
    Optional<RunOutFinding> asTurn();

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

    /** Whether there is metal to take and something else lets none be taken. */
    default boolean forbidsCutting() {
        return false;
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

        R overWires(OverWiresFinding finding);

        R document(DocumentFinding finding);
    }
}
