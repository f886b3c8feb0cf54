package org.tenthwise.app.export.qif;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.export.Records;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Event;

class QifWithoutCharacteristicsTest {

    /** A list of characteristics with nothing in it is no list by the schemas. */
    @Test
    void aRunThatTheDrawingAsksNothingOfIsValid() throws Exception {
        Plan plan = InventedPlans.inMillimetres(
                """
                [[step]]
                number = 1
                operation = 10
                class = "set-up"
                kind = "look"
                name = "Jaws"
                what = "Clean."
                """);
        QifFile file = QifFile.of(new Records.Walk(plan, "Setter 1")
                .add(new Event.Begun(plan.part(), "1", "L-1", "Lathe 4", plan.source()))
                .evidence());
        assertEquals(List.of(), file.faults());
        assertEquals(List.of(), file.all("//Characteristics"));
    }
}
