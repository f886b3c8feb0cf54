/**
 * The sums done at the bench between checks: what each asks for, how its figures are handed to the sum of its name,
 * what comes out in words, and the picture drawn from the numbers. A step of a run can fill in what is known already.
 * No formula stands here: every answer comes from {@link org.tenthwise.app.sums.Sums}.
 */
package org.tenthwise.app.bench;
