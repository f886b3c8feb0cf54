package org.tenthwise.model.compute.dovetail;

/** Which of the two that slide in each other: it says whether pins are measured over or between. */
public enum DovetailSide {
    MALE,
    FEMALE
}
