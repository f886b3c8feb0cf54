package org.tenthwise.model.tolerance;

/** What is placed: a hole, or anything of material. */
public enum FeatureOfSize {
    HOLE,
    SHAFT
}
