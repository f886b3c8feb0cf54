package org.tenthwise.app.export.qif;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;

/** The gauges that were read, and the masters and wires they were set on; each once. */
final class MeasurementDevices {

    private record Device(String mark, String kind) {}

    private final XmlIds ids;
    private final Map<Device, XmlElement> devices = new LinkedHashMap<>();

    MeasurementDevices(XmlIds ids) {
        this.ids = ids;
    }

    /** Ids of all that a gauge was set with: its own, and that of its master or of its wires. */
    List<String> of(Setting setting) {
        Optional<Device> reference = setting.reference()
                .map(mark -> new Device(
                        mark, setting.gauge().kind().reference() == GaugeKind.Reference.WIRES ? "wires" : "master"));
        return Stream.concat(
                        Stream.of(new Device(
                                setting.gauge().id(), setting.gauge().kind().key())),
                        reference.stream())
                .map(this::id)
                .toList();
    }

    private String id(Device device) {
        return devices.computeIfAbsent(device, this::made).id();
    }

    private XmlElement made(Device device) {
        return ids.give(new XmlElement("ManualMeasurementDevice"))
                .add("Name", device.mark())
                .add("Description", device.kind());
    }

    /** Nothing where no gauge was read. */
    void addTo(XmlElement document) {
        if (!devices.isEmpty()) {
            document.add(new XmlElement("MeasurementResources")
                    .addList("MeasurementDevices", List.copyOf(devices.values())));
        }
    }
}
