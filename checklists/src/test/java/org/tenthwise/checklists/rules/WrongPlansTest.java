package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every file of {@code wrong-plans} gives exactly the problems written beside it, in the order of the file. */
class WrongPlansTest {

    private static final Corpus CORPUS = Corpus.of("wrong-plans");

    static List<String> names() {
        return CORPUS.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void aWrongPlanGivesEveryProblemWithItsPlace(String name) {
        PlanReading.Bad bad = assertInstanceOf(PlanReading.Bad.class, new PlanReader().read(CORPUS.text(name)));
        assertEquals(CORPUS.problems(name), Corpus.lines(bad.problems()));
    }

    /** What a release asks of plans for the first time must not shut the runs that were begun before it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "limits-equal",
                "hidden-signs",
                "run-out-holding-unsaid",
                "temperature-degrees-missing",
                "combine-unsaid"
            })
    void aPlanKeptWithARunIsReadAsItWasWhenTheRunWasBegun(String name) {
        PlanReading.Good good = assertInstanceOf(PlanReading.Good.class, new PlanReader().readKept(CORPUS.text(name)));
        assertEquals(CORPUS.text(name), good.plan().source().text());
    }

    @Test
    void thereAreFortyWrongPlansAtLeast() {
        assertTrue(names().size() >= 40);
    }
}
