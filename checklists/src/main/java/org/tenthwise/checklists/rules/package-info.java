/**
 * Raw tables to a plan, or to every problem found; readings files likewise.
 *
 * <p>Text comes in, a {@link org.tenthwise.model.plan.Plan} or a sorted list of
 * {@link org.tenthwise.checklists.rules.PlanProblem} goes out, in the shop's words, all problems at once. There is one
 * small class for each kind of step; {@code Keys} remembers which keys were asked for, so that the unknown ones fall
 * out.
 */
package org.tenthwise.checklists.rules;
