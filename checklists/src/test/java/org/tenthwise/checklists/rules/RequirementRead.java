package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.stream.Collectors;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Words;

/** A step of a plan in millimetres with ISO 2768-m at its head, read from its keys and the words of the drawing. */
final class RequirementRead {

    static final String HEAD =
            """
            format = 1
            part = "T-1"
            revision = "A"
            issue = "1"
            name = "Test piece"
            material = "steel"
            drawing = "T-1 sheet 2"
            tolerance = "ISO 2768-m"
            unit = "mm"

            [[operation]]
            number = 10
            name = "Turn"

            [[step]]
            number = 5
            operation = 10
            """;

    static PlanReading read(String keys) {
        return new PlanReader().read(HEAD + keys);
    }

    static Step step(String keys) {
        return assertInstanceOf(PlanReading.Good.class, read(keys), () -> problems(keys))
                .plan()
                .step(5);
    }

    static String problems(String keys) {
        return read(keys) instanceof PlanReading.Bad bad
                ? bad.problems().stream()
                        .map(problem -> problem.line() + ": " + Words.ENGLISH.say(problem.what()))
                        .collect(Collectors.joining("\n"))
                : "";
    }

    static String limits(Step step) {
        Limits limits = step.limits().orElseThrow();
        return limits.lower().map(Written::text).orElse("-") + " "
                + limits.upper().map(Written::text).orElse("-");
    }

    static String from(Step step) {
        return step.limits()
                .flatMap(Limits::origin)
                .map(origin -> origin.designation())
                .orElse("");
    }

    static String requirement(String text) {
        return "requirement = \"" + text + "\"\nmethod = \"So.\"\n";
    }

    private RequirementRead() {}
}
