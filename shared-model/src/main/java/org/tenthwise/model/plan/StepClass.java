package org.tenthwise.model.plan;

/** What a step is to the drawing. */
public enum StepClass {
    /** Something that must be so before work goes on: work-holding, lot, tools. */
    SET_UP,
    /** A size or a look on the way, which the finished part does not show any more. */
    IN_PROCESS,
    /** A requirement of the drawing: a characteristic. */
    DRAWING
}
