package org.tenthwise.app.session;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/** What the step in hand wants next. */
public sealed interface Prompt {

    /** Whether a figure from the keypad or from a typing gauge answers it. */
    default boolean takesFigure() {
        return false;
    }

    /** Which gauge; {@code known} are those of the kind the shop has used. */
    record WhichGauge(GaugeKind kind, List<Gauge> known) implements Prompt {
        public WhichGauge {
            known = List.copyOf(known);
        }
    }

    /**
     * Which way a comparing gauge counts: does its number rise when the plunger is pressed in? Asked once a gauge, or
     * anew.
     */
    record WhichSense(String gauge, GaugeKind kind) implements Prompt {}

    /**
     * Whether the sense just told is right, by a figure: with {@code reading} on its dial the gauge is in a bore of
     * {@code size}, which is smaller than the master and presses the plunger in.
     *
     * @param otherwiseSoFar whether the shop had its sense the other way round until now
     */
    record SenseInFigures(String gauge, Written reading, Written size, boolean otherwiseSoFar) implements Prompt {

        /** By how much the bore is smaller: enough to be seen on any dial. */
        private static final Map<Unit, BigDecimal> SMALLER =
                Map.of(Unit.MILLIMETRE, new BigDecimal("0.010"), Unit.INCH, new BigDecimal("0.0005"));

        static SenseInFigures of(Setting onMaster, Optional<Gauge> known) {
            Written master = onMaster.certified().orElseThrow();
            Written zero = onMaster.zero().orElseThrow();
            ReadingDirection sense = onMaster.gauge().sense().orElseThrow();
            BigDecimal smaller = SMALLER.get(master.unit());
            return new SenseInFigures(
                    onMaster.gauge().id(),
                    Written.of(zero.figure().subtract(smaller.multiply(BigDecimal.valueOf(sense.sign()))), zero.unit()),
                    Written.of(master.figure().subtract(smaller), master.unit()),
                    known.flatMap(Gauge::sense)
                            .filter(before -> before != sense)
                            .isPresent());
        }
    }

    /**
     * The certified size of the master, or the certified diameter of the wires.
     *
     * @param mark of the master or the wires; where they go by their size, that
     * @param nominal of the plan: no certificate says it
     * @param known what the same gauge was set on in this run on the same master or wires, taken where nothing is
     *     typed; absent where it was not
     */
    record Certified(GaugeKind.Reference reference, String mark, Written nominal, Optional<Written> known)
            implements Prompt {
        @Override
        public boolean takesFigure() {
            return true;
        }
    }

    /**
     * What the gauge reads on the master.
     *
     * @param suggested nought, taken where nothing is typed
     */
    record Zero(Written certified, Written suggested) implements Prompt {
        @Override
        public boolean takesFigure() {
            return true;
        }
    }

    /**
     * A reading.
     *
     * @param taken how many of those that belong together are taken: all of a pass, of a run-out one turn or one set of
     *     angles
     * @param of how many of them there are to take
     */
    record Reading(Slot slot, int taken, int of) implements Prompt {
        @Override
        public boolean takesFigure() {
            return true;
        }
    }

    /**
     * The temperature of the part, or of the gauge and its master, to bring the readings of the pass to the reference
     * temperature.
     *
     * @param suggested what was read last in this run, taken where nothing is typed; absent where nothing was
     */
    record Temperature(MeasuredBody of, Optional<Degrees> suggested) implements Prompt {
        @Override
        public boolean takesFigure() {
            return true;
        }
    }

    /**
     * How the register of the machine counts: a cut is offered that is to be typed into it. Asked once a machine.
     *
     * @param machine as the run names it; may be empty
     */
    record WhichRegister(String machine) implements Prompt {}

    /** A question answered by a tap. */
    record Answering(Question question) implements Prompt {}

    /** Every reading and answer of the pass is there. */
    record Nothing() implements Prompt {}

    /** The step is shut by a hold point. */
    record Held(List<Integer> waitingFor) implements Prompt {
        public Held {
            waitingFor = List.copyOf(waitingFor);
        }
    }

    /** The run is closed. */
    record Closed() implements Prompt {}
}
