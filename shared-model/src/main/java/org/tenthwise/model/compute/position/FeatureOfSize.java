package org.tenthwise.model.compute.position;

/** What is placed: a hole, or anything of material. */
public enum FeatureOfSize {
    HOLE,
    SHAFT
}
