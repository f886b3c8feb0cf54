package org.tenthwise.app.export.qif;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.record.Calibrated;
import org.tenthwise.model.record.Taken;

/** The gauges that were read, and the masters and wires they were set on; each once. */
final class MeasurementDevices {

    /** A gauge is in date until its due day is over, where the station is. */
    private static final String LAST_SECOND = "T23:59:59";

    private record Device(String mark, String kind, Calibration calibration) {}

    private final XmlIds ids;
    private final Map<Device, XmlElement> devices = new LinkedHashMap<>();

    MeasurementDevices(XmlIds ids) {
        this.ids = ids;
    }

    /**
     * Ids of all that something was taken with: the gauge, and its master or its wires, each under the certificate it
     * had then.
     */
    List<String> of(Taken<?> taken) {
        return taken.setting().stream()
                .flatMap(setting -> of(setting, taken.calibrated()))
                .map(this::id)
                .toList();
    }

    private static Stream<Device> of(Setting setting, Optional<Calibrated> by) {
        String under = setting.gauge().kind().reference() == GaugeKind.Reference.WIRES ? "wires" : "master";
        return Stream.concat(
                Stream.of(new Device(
                        setting.gauge().id(),
                        setting.gauge().kind().key(),
                        by.map(Calibrated::gauge).orElse(Calibration.NOT_STATED))),
                setting.reference().stream()
                        .map(mark -> new Device(
                                mark, under, by.map(Calibrated::master).orElse(Calibration.NOT_STATED))));
    }

    private String id(Device device) {
        return devices.computeIfAbsent(device, this::made).id();
    }

    /** The standard has a place for the moment a calibration is over, and none for the number of its certificate. */
    private XmlElement made(Device device) {
        return ids.give(new XmlElement("ManualMeasurementDevice"))
                .add("Name", device.mark())
                .add("Description", device.kind())
                .add(new NamedAttributes()
                        .and("certificate", device.calibration().certificate())
                        .element())
                .addList(
                        "Calibrations",
                        device.calibration().due().stream()
                                .map(due -> new XmlElement("Calibration").add("ExpirationDate", due + LAST_SECOND))
                                .toList());
    }

    /** Nothing where no gauge was read. */
    void addTo(XmlElement document) {
        if (!devices.isEmpty()) {
            document.add(new XmlElement("MeasurementResources")
                    .addList("MeasurementDevices", List.copyOf(devices.values())));
        }
    }
}
