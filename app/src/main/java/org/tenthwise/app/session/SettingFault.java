package org.tenthwise.app.session;

/** What turned out to be wrong with the setting of a gauge; whatever has the same fault goes with it. */
public enum SettingFault {
    /** The number goes the other way: every setting of that gauge with that sense, in every run. */
    SENSE,
    /** Not that master, not those wires: every setting on the same mark with the same certified size, in every run. */
    REFERENCE,
    /** A wrong zero, or the gauge was found off: this setting alone. */
    ZERO
}
