package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Plan;

/** The text of a plan of one step, by the keys of its check, and what it is read as. */
final class PlanText {

    static final String HEAD =
            """
            format = 1
            part = "T-1"
            revision = "A"
            issue = "1"
            name = "Test piece"
            material = "steel"
            drawing = "T-1 sheet 2"
            unit = "in"

            [[operation]]
            number = 10
            name = "Turn"

            [[step]]
            number = 5
            operation = 10
            name = "It"
            method = "So."
            """;

    static final String DEPTH =
            """
            kind = "depth"
            lower = 0.1240
            upper = 0.1250
            places = ["floor"]
            gauge_kind = "depth-gauge"
            """;

    static Check check(String keys) {
        return plan(keys).step(5).check();
    }

    static Plan plan(String keys) {
        return assertInstanceOf(PlanReading.Good.class, new PlanReader().read(HEAD + keys))
                .plan();
    }

    private PlanText() {}
}
