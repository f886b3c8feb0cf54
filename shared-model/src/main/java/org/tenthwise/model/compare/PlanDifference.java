package org.tenthwise.model.compare;

/**
 * One thing that is otherwise.
 *
 * @param before as the first plan has it; empty where it says nothing
 * @param after as the second has it; empty where it says nothing
 */
public record PlanDifference(ChangeKind kind, Aspect aspect, String before, String after) {}
