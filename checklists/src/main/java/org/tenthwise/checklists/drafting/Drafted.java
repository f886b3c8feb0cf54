package org.tenthwise.checklists.drafting;

import java.util.List;
import java.util.Optional;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.model.words.Message;

/**
 * What came of a list: a draft, and of every line with something on it what it became.
 *
 * @param plan with what the list does not say left open
 */
public record Drafted(PlanText plan, List<CameOf> lines) {

    public Drafted {
        lines = List.copyOf(lines);
    }

    /**
     * A line of the list.
     *
     * @param place in the file, from 1
     * @param number of the characteristic, empty where it has none
     * @param requirement as the list has it, empty where it has none
     * @param tables kinds of table that came of it, by their names in the plan; empty where it was refused: then an
     *     open step says so
     * @param refused why nothing came of it
     */
    public record CameOf(int place, String number, String requirement, List<String> tables, Optional<Message> refused) {

        public CameOf {
            tables = List.copyOf(tables);
        }
    }

    public List<CameOf> refused() {
        return lines.stream().filter(line -> line.refused().isPresent()).toList();
    }
}
