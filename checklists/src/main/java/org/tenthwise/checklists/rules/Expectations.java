package org.tenthwise.checklists.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Word;

/** {@code [expect]}: the verdict on each step, by its number, and the outcome of the whole. */
record Expectations(Map<Integer, VerdictKind> standings, Optional<Outcome> outcome) {

    private static final String EXPECT = "expect";

    static Expectations read(TableKeys sample, Plan plan) {
        Optional<RawTable> table = sample.ifAny(EXPECT, sample::table);
        if (table.isEmpty()) {
            return new Expectations(Map.of(), Optional.empty());
        }
        TableKeys keys = sample.inside(EXPECT, table.get());
        Optional<Outcome> outcome =
                keys.ifAny("outcome", key -> keys.word(key, List.of(Outcome.values()), Word::spaced));
        Map<Integer, VerdictKind> standings = new LinkedHashMap<>();
        for (Step step : plan.steps()) {
            keys.ifAny(
                            String.valueOf(step.number()),
                            key -> keys.word(key, List.of(VerdictKind.values()), Word::spaced))
                    .ifPresent(standing -> standings.put(step.number(), standing));
        }
        keys.finish();
        return new Expectations(standings, outcome);
    }
}
