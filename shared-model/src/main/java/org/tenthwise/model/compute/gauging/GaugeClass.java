package org.tenthwise.model.compute.gauging;

/** How closely a plain plug or ring is made, the closest first; ASME B89.1.5. */
public enum GaugeClass {
    XX,
    X,
    Y,
    Z,
    ZZ
}
