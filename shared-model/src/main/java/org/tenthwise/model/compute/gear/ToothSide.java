package org.tenthwise.model.compute.gear;

/** Whether the teeth stand outwards, as of a shaft, or inwards, as of a hub. */
public enum ToothSide {
    EXTERNAL,
    INTERNAL
}
