package org.tenthwise.model.run;

import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;

/** What a shop comes to know of what it measures and cuts with: kept in the run it was said in, and for all runs. */
public sealed interface ShopEvent extends Event
        permits ShopEvent.GaugeKnown, ShopEvent.CalibrationKnown, ShopEvent.MachineKnown {

    /** A gauge was made known to the shop, its sense asked where the kind has one. */
    record GaugeKnown(Gauge gauge) implements ShopEvent {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gaugeKnown(this);
        }
    }

    /**
     * By what certificate a gauge, or what it is set on, was calibrated and until when: kept in the run it is used in,
     * and for the shop, so that the next run need not ask.
     *
     * @param putsRight whether what was said of it last was wrong, or missing, and this holds in its place from where
     *     that began to hold; otherwise it holds for what is read from now on
     */
    record CalibrationKnown(GaugeOrMaster what, Calibration calibration, boolean putsRight) implements ShopEvent {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.calibrationKnown(this);
        }
    }

    /**
     * How the register of a machine counts across the axis, and the aim that is usual on it: kept in a run of that
     * machine, and for the shop, so that the next run on it need not ask.
     *
     * @param machine as the run names it; may be empty in a run that names none
     */
    record MachineKnown(String machine, Register register, Aim.ByLimits usual) implements ShopEvent {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.machineKnown(this);
        }
    }
}
