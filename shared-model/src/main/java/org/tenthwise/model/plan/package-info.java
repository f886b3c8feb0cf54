/**
 * A check plan: a part, its operations and steps, what each step asks for, and an outline of the part to know it by.
 *
 * <p>Comes in checked, from {@code checklists}; goes out to the run, the sums, the screens and the record. A plan is
 * kept with its own text and the hash of that text, so that a record can always be read against the plan it was made
 * with.
 */
package org.tenthwise.model.plan;
