/**
 * What a run comes to: a finding for every step of the plan, and the sheet that holds them.
 *
 * <p>In come a plan and a run; out go findings with every reading, its correction, the computed value and the verdict.
 * Screens, records, exports and the command line all read the same {@link org.tenthwise.model.record.Sheet}.
 */
package org.tenthwise.model.record;
