package org.tenthwise.model.gauge;

import java.util.Arrays;
import java.util.Optional;
import org.tenthwise.model.quantity.QuantityKind;

/** The kinds of gauge a plan can ask for. Which kind can make which reading is the plan rules' business. */
public enum GaugeKind {
    DIAL_INDICATOR("dial-indicator", Reference.NONE),
    LEVER_INDICATOR("lever-indicator", Reference.NONE),
    BORE_GAUGE("bore-gauge", Reference.MASTER),
    INSIDE_MICROMETER("inside-micrometer", Reference.NONE),
    MICROMETER("micrometer", Reference.NONE),
    CALIPER("caliper", Reference.NONE),
    DEPTH_GAUGE("depth-gauge", Reference.NONE),
    DEPTH_MICROMETER("depth-micrometer", Reference.NONE),
    GAUGE_BLOCKS("gauge-blocks", Reference.NONE),
    MICROMETER_OVER_WIRES("micrometer-over-wires", Reference.WIRES),
    LIMIT_GAUGE("limit-gauge", Reference.NONE),
    BEVEL_PROTRACTOR("bevel-protractor", QuantityKind.ANGLE),
    /** Set up with gauge blocks until an indicator shows the face level; the angle of the bar is read. */
    SINE_BAR("sine-bar", QuantityKind.ANGLE);

    /** What a gauge of the kind is read against. */
    public enum Reference {
        /** Reads the size itself. */
        NONE,
        /** Compares with a master of certified size; the reading on the master is the zero. */
        MASTER,
        /** Reads over three wires of certified diameter. */
        WIRES
    }

    private final String key;
    private final Reference reference;
    private final QuantityKind reads;

    GaugeKind(String key, Reference reference) {
        this.key = key;
        this.reference = reference;
        this.reads = QuantityKind.LENGTH;
    }

    /** One that reads what it measures itself. */
    GaugeKind(String key, QuantityKind reads) {
        this.key = key;
        this.reference = Reference.NONE;
        this.reads = reads;
    }

    /** How plan files name the kind. */
    public String key() {
        return key;
    }

    public Reference reference() {
        return reference;
    }

    /** What its figures are of. */
    public QuantityKind reads() {
        return reads;
    }

    public static Optional<GaugeKind> ofKey(String key) {
        return Arrays.stream(values()).filter(kind -> kind.key.equals(key)).findFirst();
    }
}
