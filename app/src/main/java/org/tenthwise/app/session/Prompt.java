package org.tenthwise.app.session;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Written;

/**
 * What the step in hand wants next. What is done with each kind in its own way is a {@link Cases}, so that a new kind
 * does not compile until every one of them names it.
 */
public sealed interface Prompt {

    /** What {@code cases} has for this kind. */
    <R> R match(Cases<R> cases);

    /** Whether a figure from the keypad or from a typing gauge answers it. */
    default boolean takesFigure() {
        return asForAFigure().isPresent();
    }

    /** It as what a figure answers; absent where none does. */
    default Optional<ForAFigure> asForAFigure() {
        return Optional.empty();
    }

    /** Whether nothing is taken at the step: it is not in the run, a hold point keeps it shut, or the run is closed. */
    default boolean isShut() {
        return this instanceof NotInThisRun || this instanceof Held || isClosed();
    }

    /** Whether the run is closed. */
    default boolean isClosed() {
        return this instanceof Closed;
    }

    /** Whether all is taken. */
    default boolean isNothing() {
        return this instanceof Nothing;
    }

    /** The reading it asks for; absent where it asks for something else. */
    default Optional<Reading> asReading() {
        return Optional.empty();
    }

    /** The question it asks; absent where it asks for something else. */
    default Optional<Question> asQuestion() {
        return Optional.empty();
    }

    /** Whether it asks which way a gauge counts. */
    default boolean asksSense() {
        return this instanceof WhichSense;
    }

    /** Whether it asks if the sense just told is right. */
    default boolean asksIfSenseIsRight() {
        return this instanceof SenseInFigures;
    }

    /** What a gauge was set on before, which it asks about; absent where it asks for something else. */
    default Optional<LiesReady> asLyingReady() {
        return Optional.empty();
    }

    /** Whether it asks for a paper. */
    default boolean asksDocument() {
        return this instanceof ForDocument;
    }

    /** Whether it asks for a temperature. */
    default boolean asksTemperature() {
        return this instanceof Temperature;
    }

    /** The steps that keep this one shut; empty where none do. */
    default List<Integer> waitingFor() {
        return List.of();
    }

    /** What a figure answers. */
    sealed interface ForAFigure extends Prompt {

        /** What {@code cases} has for this kind. */
        <R> R match(FigureCases<R> cases);

        @Override
        default <R> R match(Cases<R> cases) {
            return match((FigureCases<R>) cases);
        }

        @Override
        default Optional<ForAFigure> asForAFigure() {
            return Optional.of(this);
        }
    }

    /** Something for each kind of prompt that a figure answers. */
    interface FigureCases<R> {

        R certified(Certified prompt);

        R zero(Zero prompt);

        R reading(Reading prompt);

        R temperature(Temperature prompt);
    }

    /** Something for each kind of prompt. */
    interface Cases<R> extends FigureCases<R> {

        R whichGauge(WhichGauge prompt);

        R whichSense(WhichSense prompt);

        R senseInFigures(SenseInFigures prompt);

        R liesReady(LiesReady prompt);

        R whichRegister(WhichRegister prompt);

        R answering(Answering prompt);

        R forDocument(ForDocument prompt);

        R nothing(Nothing prompt);

        R notInThisRun(NotInThisRun prompt);

        R held(Held prompt);

        R closed(Closed prompt);
    }

    /** Which gauge; {@code known} are those of the kind the shop has used. */
    record WhichGauge(GaugeKind kind, List<Gauge> known) implements Prompt {
        public WhichGauge {
            known = List.copyOf(known);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.whichGauge(this);
        }
    }

    /**
     * Which way a comparing gauge counts: does its number rise when the plunger is pressed in, or as the size grows?
     * Asked once a gauge, or anew.
     */
    record WhichSense(String gauge, GaugeKind kind) implements Prompt {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.whichSense(this);
        }
    }

    /**
     * Whether the sense just told is right, by a figure: with {@code reading} on its dial the gauge is on a size of
     * {@code size}, which is smaller than the master; in a bore that presses the plunger in.
     *
     * @param otherwiseSoFar whether the shop had its sense the other way round until now
     * @param byPlunger whether it was told by its plunger
     */
    record SenseInFigures(String gauge, Written reading, Written size, boolean otherwiseSoFar, boolean byPlunger)
            implements Prompt {

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.senseInFigures(this);
        }
    }

    /**
     * Whether the gauge is set as it was before: on the same master, with its dial at zero, or over the same wires. No
     * figure answers it, so that none a gauge sends is taken for the size of a ring.
     *
     * @param mark of the master or the wires; where they go by their size, that
     * @param certified what the same gauge was set on last on them, in this run or in one before
     * @param part serial of the part before at which that was typed; absent where it was at this one
     * @param zero what the gauge then reads on its master; absent with wires
     */
    record LiesReady(
            GaugeKind.Reference reference,
            String mark,
            Written certified,
            Optional<String> part,
            Optional<Written> zero)
            implements Prompt {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.liesReady(this);
        }

        @Override
        public Optional<LiesReady> asLyingReady() {
            return Optional.of(this);
        }
    }

    /**
     * The certified size of the master, or the certified diameter of the wires.
     *
     * @param mark of the master or the wires; where they go by their size, that
     * @param nominal of the plan: no certificate says it
     * @param known what the same gauge was set on last on the same master or wires, taken where nothing is typed;
     *     absent where it was not
     */
    record Certified(GaugeKind.Reference reference, String mark, Written nominal, Optional<Written> known)
            implements ForAFigure {
        @Override
        public <R> R match(FigureCases<R> cases) {
            return cases.certified(this);
        }
    }

    /**
     * What the gauge reads on the master.
     *
     * @param suggested zero, taken where nothing is typed
     */
    record Zero(Written certified, Written suggested) implements ForAFigure {
        @Override
        public <R> R match(FigureCases<R> cases) {
            return cases.zero(this);
        }
    }

    /**
     * A reading.
     *
     * @param taken how many of those that belong together are taken: all of a pass, of a run-out one turn or one set of
     *     angles
     * @param of how many of them there are to take
     */
    record Reading(Slot slot, int taken, int of) implements ForAFigure {
        @Override
        public <R> R match(FigureCases<R> cases) {
            return cases.reading(this);
        }

        @Override
        public Optional<Reading> asReading() {
            return Optional.of(this);
        }
    }

    /**
     * The temperature of the part, or of the gauge and its master, to bring the readings of the pass to the reference
     * temperature.
     *
     * @param suggested what was read last in this run, taken where nothing is typed; absent where nothing was
     */
    record Temperature(MeasuredBody of, Optional<Degrees> suggested) implements ForAFigure {
        @Override
        public <R> R match(FigureCases<R> cases) {
            return cases.temperature(this);
        }
    }

    /**
     * How the register of the machine counts: a cut is offered that is to be typed into it. Asked once a machine.
     *
     * @param machine as the run names it; may be empty
     */
    record WhichRegister(String machine) implements Prompt {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.whichRegister(this);
        }
    }

    /** A question answered by a tap. */
    record Answering(Question question) implements Prompt {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.answering(this);
        }

        @Override
        public Optional<Question> asQuestion() {
            return Optional.of(question);
        }
    }

    /** What a paper says. */
    record ForDocument() implements Prompt {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.forDocument(this);
        }
    }

    /** Every reading and answer of the pass is there. */
    record Nothing() implements Prompt {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.nothing(this);
        }
    }

    /** The run does not ask the step, by what it was begun for. */
    record NotInThisRun() implements Prompt {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.notInThisRun(this);
        }
    }

    /** The step is shut by a hold point. */
    record Held(List<Integer> waitingFor) implements Prompt {
        public Held {
            waitingFor = List.copyOf(waitingFor);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.held(this);
        }
    }

    /** The run is closed. */
    record Closed() implements Prompt {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.closed(this);
        }
    }
}
