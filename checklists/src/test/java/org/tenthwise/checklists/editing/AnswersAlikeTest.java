package org.tenthwise.checklists.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is taken of another check belongs to every check of its kind; what belongs to one feature never is. */
class AnswersAlikeTest {

    private static final List<String> MISSING = List.of("method", "operation", "places", "master");

    private static PlanText plan(String... requirements) {
        StringBuilder plan = new StringBuilder("unit = \"mm\"\n");
        for (String requirement : requirements) {
            plan.append("\n[[step]]\nrequirement = \"%s\"\n".formatted(requirement));
        }
        return PlanText.of(plan.toString()).orElseThrow();
    }

    private static PlanText answered(PlanText plan, int place) {
        return plan.with("step", place, step -> step.with("operation", "20")
                .with("places", "[\"0°\", \"90°\"]")
                .with("master", "30.000")
                .with("method", "\"Two ways.\""));
    }

    @Test
    void ofTheSameKindAllButTheMasterIsOffered() {
        PlanText plan = answered(plan("Ø30 H7", "Ø18 H7"), 0);
        assertEquals(
                List.of(Map.of("operation", "20", "places", "[\"0°\", \"90°\"]", "method", "\"Two ways.\"")),
                new AnswersAlike(plan)
                        .of(1, MISSING).stream()
                                .map(AnswersAlike.Answers::values)
                                .toList());
    }

    /** A bore is not a shaft, nor a length a diameter, nor a radius a length. */
    @Test
    void nothingIsOfferedOfAnotherKindOrFeature() {
        for (String other : List.of("Ø18 g6", "40 ±0.1", "R6 ±0.2", "45° ±1°", "√Ra 0.8")) {
            assertEquals(List.of(), new AnswersAlike(answered(plan("Ø30 H7", other), 0)).of(1, MISSING), other);
        }
        assertEquals(List.of(), new AnswersAlike(answered(plan("40 ±0.1", "R6 ±0.2"), 0)).of(1, MISSING));
    }

    @Test
    void anotherGaugeIsReadAnotherWay() {
        PlanText plan = answered(plan("Ø30 H7", "Ø18 H7"), 0)
                .with("step", 0, step -> step.with("gauge_kind", "\"inside-micrometer\""));
        assertEquals(List.of(), new AnswersAlike(plan).of(1, MISSING));
        assertEquals(Optional.of("bore-gauge"), new AnswersAlike(plan).gauge(1));
    }

    /** A diameter without a class may be inside or outside: until that is said, nothing is like it. */
    @Test
    void nothingIsOfferedWhereTheKindIsOpen() {
        PlanText plan = answered(plan("Ø30 ±0.1", "Ø18 ±0.1"), 0);
        assertEquals(List.of(), new AnswersAlike(plan).of(1, MISSING));
    }

    @Test
    void halfAnAnswerIsNotOfferedNorTheSameTwice() {
        PlanText plan = answered(answered(plan("Ø30 H7", "Ø25 H7", "Ø18 H7", "Ø12 H7"), 0), 1);
        assertEquals(1, new AnswersAlike(plan).of(3, MISSING).size());
        PlanText half = plan("Ø30 H7", "Ø18 H7").with("step", 0, step -> step.with("operation", "20"));
        assertEquals(List.of(), new AnswersAlike(half).of(1, MISSING));
    }

    @Test
    void aSingleKeyIsChosenByItself() {
        assertEquals(List.of(), new AnswersAlike(answered(plan("Ø30 H7", "Ø18 H7"), 0)).of(1, List.of("operation")));
    }
}
