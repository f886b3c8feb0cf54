package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.SignedAs;

/** What a readings file says of its run as a whole: its head, its machine, its signatures. */
class ReadingsOfARunTest {

    @Test
    void theHeadBeginsTheRun() {
        ReadingsFile sample = ReadingsFileTest.sample("[[step]]\nnumber = 1\n");
        assertEquals(
                new Event.Begun(
                        ReadingsFileTest.PLAN.part(), "015", "AB-7731", "Lathe 4", ReadingsFileTest.PLAN.source()),
                sample.begun());
        assertEquals("Setter 2", sample.by());
        assertEquals(Map.of(), sample.expected());
        assertEquals(Optional.empty(), sample.outcome());
    }

    @Test
    void howTheRegisterOfTheMachineCountsIsSaidFirst() {
        String steps = "[[step]]\nnumber = 1\n";
        assertEquals(
                new ShopEvent.MachineKnown("Lathe 4", Register.RADIUS, Aim.ByLimits.THIRD),
                ReadingsFileTest.sample(
                                ReadingsFileTest.HEAD.replace(
                                        "by =", "register = \"radius\"\nusual_aim = \"third\"\nby ="),
                                steps)
                        .events()
                        .get(0));
        assertEquals(
                new ShopEvent.MachineKnown("Lathe 4", Register.DIAMETER, Aim.ByLimits.MIDDLE),
                ReadingsFileTest.sample(ReadingsFileTest.HEAD.replace("by =", "register = \"diameter\"\nby ="), steps)
                        .events()
                        .get(0));
    }

    @Test
    void signaturesAreGivenInTheOrderOfTheFile() {
        List<Event> events = ReadingsFileTest.sample(
                        """
                [[step]]
                number = 1
                answers = ["yes"]

                [[signature]]
                by = "Setter 2"
                meaning = "machined and measured"

                [close]
                by = "Inspector 1"
                meaning = "accepted"

                [[signature]]
                by = "Inspector 2"
                meaning = "measured again"
                """)
                .events();
        assertEquals(
                List.of(
                        new Event.Signed("Setter 2", SignedAs.MACHINED_AND_MEASURED),
                        new Event.Closed("Inspector 1", SignedAs.ACCEPTED),
                        new Event.Signed("Inspector 2", SignedAs.MEASURED_AGAIN)),
                events.subList(events.size() - 3, events.size()));
    }
}
