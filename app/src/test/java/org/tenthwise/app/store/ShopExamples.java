package org.tenthwise.app.store;

import static org.tenthwise.app.store.Example.BORE_GAUGE;
import static org.tenthwise.app.store.Example.DEPTH_GAUGE;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.ShopEvent;

/** An invented event of every kind by which a shop comes to know something. */
final class ShopExamples {

    private ShopExamples() {}

    static List<Example> all() {
        return List.of(
                new Example(
                        "gauge-known",
                        new ShopEvent.GaugeKnown(BORE_GAUGE),
                        """
                        {"gauge":{"id":"BG-04","kind":"bore-gauge","sense":"falls-with-size"}}"""),
                new Example(
                        "gauge-known",
                        new ShopEvent.GaugeKnown(DEPTH_GAUGE),
                        """
                        {"gauge":{"id":"DG-01","kind":"depth-gauge"}}"""),
                new Example(
                        "calibration-known",
                        new ShopEvent.CalibrationKnown(
                                GaugeOrMaster.of(BORE_GAUGE),
                                new Calibration("K-2211", Optional.of(LocalDate.parse("2027-03-31"))),
                                false),
                        """
                        {"mark":"BG-04","kind":"bore-gauge","certificate":"K-2211","due":"2027-03-31"}"""),
                new Example(
                        "calibration-known",
                        new ShopEvent.CalibrationKnown(
                                GaugeOrMaster.master("R-35"), new Calibration("K-77", Optional.empty()), true),
                        """
                        {"mark":"R-35","certificate":"K-77","puts-right":true}"""),
                new Example(
                        "calibration-known",
                        new ShopEvent.CalibrationKnown(GaugeOrMaster.master("R-35"), Calibration.NOT_STATED, true),
                        """
                        {"mark":"R-35","puts-right":true}"""),
                new Example(
                        "machine-known",
                        new ShopEvent.MachineKnown("Lathe 3", Register.RADIUS, Aim.ByLimits.THIRD),
                        """
                        {"machine":"Lathe 3","register":"radius","usual-aim":"third"}"""),
                new Example(
                        "machine-known",
                        new ShopEvent.MachineKnown("", Register.DIAMETER, Aim.ByLimits.MIDDLE),
                        """
                        {"machine":"","register":"diameter","usual-aim":"middle"}"""));
    }
}
