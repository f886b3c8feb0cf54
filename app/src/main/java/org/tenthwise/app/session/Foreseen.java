package org.tenthwise.app.session;

import java.util.Map;
import org.tenthwise.model.record.Sheet;

/**
 * What a report would come to; nothing of it is entered.
 *
 * @param sheet as it would be with every figure that can be taken
 * @param against what is said against it, by number of the check; empty where all of it can be taken
 */
public record Foreseen(Sheet sheet, Map<Integer, Objection> against) {
    public Foreseen {
        against = Map.copyOf(against);
    }
}
