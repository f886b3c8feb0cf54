package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Plan;

/** Every file of {@code wrong-readings}, read against the plan of the screw carrier, gives the problems beside it. */
class WrongReadingsTest {

    private static final Corpus CORPUS = Corpus.of("wrong-readings");
    private static final Plan PLAN = DemoPart.SCREW_CARRIER.plan();

    static List<String> names() {
        return CORPUS.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void wrongReadingsGiveEveryProblemWithItsPlace(String name) {
        SampleReading.Bad bad =
                assertInstanceOf(SampleReading.Bad.class, new SampleReader().read(CORPUS.text(name), PLAN));
        assertEquals(CORPUS.problems(name), Corpus.lines(bad.problems()));
    }

    @Test
    void thereAreTwelveWrongReadingsFilesAtLeast() {
        assertTrue(names().size() >= 12);
    }
}
