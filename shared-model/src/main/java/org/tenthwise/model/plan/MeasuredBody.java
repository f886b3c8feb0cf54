package org.tenthwise.model.plan;

/** Whose temperature is read: both have grown or shrunk when a size is read away from 20 °C. */
public enum MeasuredBody {
    PART,
    /** The gauge, and the master or the wires it was set with, which lie beside it. */
    GAUGE
}
