package org.tenthwise.model.gauge;

import java.util.Optional;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.words.Word;

/** The kinds of gauge a plan can ask for. Which kind can make which reading is the plan rules' business. */
public enum GaugeKind {
    DIAL_INDICATOR(Reference.NONE),
    LEVER_INDICATOR(Reference.NONE),
    BORE_GAUGE(Reference.MASTER),
    INSIDE_MICROMETER(Reference.NONE),
    MICROMETER(Reference.NONE),
    CALIPER(Reference.NONE),
    DEPTH_GAUGE(Reference.NONE),
    DEPTH_MICROMETER(Reference.NONE),
    GAUGE_BLOCKS(Reference.NONE),
    MICROMETER_OVER_WIRES(Reference.WIRES),
    LIMIT_GAUGE(Reference.NONE),
    BEVEL_PROTRACTOR(QuantityKind.ANGLE),
    /** Set up with gauge blocks until an indicator shows the face level; the angle of the bar is read. */
    SINE_BAR(QuantityKind.ANGLE);

    /** What a gauge of the kind is read against. */
    public enum Reference {
        /** Reads the size itself. */
        NONE,
        /** Compares with a master of certified size; the reading on the master is the zero. */
        MASTER,
        /** Reads over three wires of certified diameter. */
        WIRES
    }

    private final Reference reference;
    private final QuantityKind reads;

    GaugeKind(Reference reference) {
        this.reference = reference;
        this.reads = QuantityKind.LENGTH;
    }

    /** One that reads what it measures itself. */
    GaugeKind(QuantityKind reads) {
        this.reference = Reference.NONE;
        this.reads = reads;
    }

    /** How plan files name the kind. */
    public String key() {
        return Word.of(this);
    }

    public Reference reference() {
        return reference;
    }

    /** What its figures are of. */
    public QuantityKind reads() {
        return reads;
    }

    public static Optional<GaugeKind> ofKey(String key) {
        return Word.find(GaugeKind.class, key);
    }
}
