package org.tenthwise.app.session;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Body;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/** What the step in hand wants next. */
public sealed interface Asked {

    /** Whether a figure from the keypad or from a typing gauge answers it. */
    default boolean takesFigure() {
        return false;
    }

    /** Which gauge; {@code known} are those of the kind the shop has used. */
    record WhichGauge(GaugeKind kind, List<Gauge> known) implements Asked {
        public WhichGauge {
            known = List.copyOf(known);
        }
    }

    /** Which way a comparing gauge counts: does its number rise when the plunger is pressed in? Asked once a gauge. */
    record WhichSense(String gauge, GaugeKind kind) implements Asked {
    }

    /**
     * The certified size of the master, or the certified diameter of the wires.
     *
     * @param suggested the nominal of the plan, taken where nothing is typed
     */
    record Certified(GaugeKind.Reference reference, Written suggested) implements Asked {
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
    record Zero(Written certified, Written suggested) implements Asked {
        @Override
        public boolean takesFigure() {
            return true;
        }
    }

    /**
     * A reading.
     *
     * @param taken how many of this pass are taken
     * @param of    how many there are to take
     */
    record Reading(Slot slot, int taken, int of, Unit unit) implements Asked {
        @Override
        public boolean takesFigure() {
            return true;
        }
    }

    /**
     * The temperature of the part, or of the gauge and its master, to bring the readings of the pass to 20 °C.
     *
     * @param suggested what was read last in this run, taken where nothing is typed; absent where nothing was
     */
    record Temperature(Body of, Optional<Celsius> suggested) implements Asked {
        @Override
        public boolean takesFigure() {
            return true;
        }
    }

    /** A question answered by a tap. */
    record Answering(Question question) implements Asked {
    }

    /** Every reading and answer of the pass is there. */
    record Nothing() implements Asked {
    }

    /** The step is shut by a hold point. */
    record Held(List<Integer> waitingFor) implements Asked {
        public Held {
            waitingFor = List.copyOf(waitingFor);
        }
    }

    /** The run is closed. */
    record Closed() implements Asked {
    }
}
