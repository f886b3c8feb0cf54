/**
 * The text of a plan file changed as a person would change it: what is not touched stays byte for byte, comments with
 * it.
 *
 * <p>Nothing here knows what a plan means: a changed text is read by {@link org.tenthwise.checklists.rules.PlanReader},
 * as any other.
 */
package org.tenthwise.checklists.editing;
