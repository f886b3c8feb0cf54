package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Holding;

/**
 * What holds the work: {@code holding}, the jaws that plans gave before there was that word, and where jaw 1 stands.
 */
final class HoldingRules {

    private static final String HOLDING = "holding";
    private static final String JAWS = "jaws";
    private static final String FIRST_JAW = "first_jaw";
    private static final List<Integer> CHUCKS = List.of(0, 3, 4);
    private static final List<Holding> KNOWN = Arrays.stream(Holding.values())
            .filter(holding -> holding != Holding.UNSAID)
            .toList();

    private HoldingRules() {}

    static Holding read(TableKeys keys) {
        Optional<Holding> holding = keys.ifAny(HOLDING, key -> keys.word(key, KNOWN, Holding::key));
        Optional<Integer> jaws = keys.ifAny(JAWS, keys::whole);
        jaws.filter(number -> !CHUCKS.contains(number))
                .ifPresent(number -> keys.problem(JAWS, "plan.holding.jaws", number));
        jaws.filter(CHUCKS::contains).ifPresent(number -> holding.filter(said -> said.jaws() != number)
                .ifPresent(said -> keys.problem(JAWS, "plan.holding.other-jaws", number, said.key(), said.jaws())));
        if (jaws.isPresent() && !keys.has(HOLDING)) {
            keys.problemUnlessKept(
                    JAWS,
                    "plan.holding.missing",
                    TableKeys.quoted(KNOWN.stream().map(Holding::key).toList()));
        }
        return holding.orElseGet(() -> Holding.ofJaws(jaws.orElse(0)));
    }

    /** Degrees at which jaw 1 stands. */
    static BigDecimal firstJaw(TableKeys keys, Holding holding) {
        BigDecimal first = keys.ifAny(FIRST_JAW, keys::number).orElse(BigDecimal.ZERO);
        if (!PlaceRules.isOnTheCircle(first)) {
            keys.problem(FIRST_JAW, "plan.angle", first);
        }
        if (holding.jaws() == 0 && keys.has(FIRST_JAW)) {
            keys.problem(FIRST_JAW, "plan.holding.no-jaws");
        }
        return first;
    }
}
