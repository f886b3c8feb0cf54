package org.tenthwise.app.session;

import java.time.OffsetDateTime;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Sheet;

/**
 * A run for a list.
 *
 * @param inHand step it would go on with
 * @param last when something was last done in it
 */
public record RunSummary(String id, Sheet sheet, Step inHand, OffsetDateTime last) {}
