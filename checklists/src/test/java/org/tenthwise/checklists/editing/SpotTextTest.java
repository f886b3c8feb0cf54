package org.tenthwise.checklists.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.PageSpot;

class SpotTextTest {

    private static Optional<PageSpot> read(String written) {
        return SpotText.of(TableText.ofList("step").with(SpotText.KEY, written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"[2, 0, 1000]", "[2,0,1000]", "[ 2 , 0 , 1000 , ]"})
    void aPlaceIsReadHoweverItIsSpaced(String written) {
        assertEquals(Optional.of(new PageSpot(2, 0, 1000)), read(written));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"[0, 1, 1]", "[1, 1001, 1]", "[1, -1, 1]", "[1, 1]", "[1, 2, 3, 4]", "\"1, 2, 3\"", "[201, 1, 1]"
            })
    void whatIsOnNoPageIsNoPlace(String written) {
        assertEquals(Optional.empty(), read(written));
    }

    @Test
    void whatIsWrittenIsReadAgainAndByThePlan() {
        PageSpot spot = new PageSpot(3, 250, 7);
        assertEquals(Optional.of(spot), read(SpotText.written(spot)));
        PlanInHand plan =
                new PlanInHand(PlanText.of(DemoPart.SCREW_CARRIER.planText()).orElseThrow());
        plan.changeStep(2, step -> step.with(SpotText.KEY, SpotText.written(spot)));
        assertEquals(
                Optional.of(spot),
                plan.plan().orElseThrow().steps().get(2).drawing().onPage());
        plan.copy(2);
        assertEquals(Optional.empty(), SpotText.of(plan.steps().get(3)), "a copy is elsewhere on the drawing");
    }

    @Test
    void whatAPersonReadsOfItIsWrittenAsTheSamePlace() {
        String reads = ValueText.reads("[1, 250, 400]");
        assertEquals(Optional.of(new PageSpot(1, 250, 400)), read(ValueText.written(SpotText.KEY, reads)));
    }
}
