package org.tenthwise.app.export.qif;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.export.pdf.Scene;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.checklists.rules.ReadingsFile;

/** Every document is valid by the schemas of the standard, and by what these let through. */
class ValidQifTest {

    private static void assertSound(Evidence evidence) {
        QifFile file = QifFile.of(evidence);
        assertEquals(List.of(), file.faults());
        long asked = evidence.sheet().lines().stream()
                .filter(DrawnRequirements::isOfDrawing)
                .count();
        int unanswered = file.count("//AttributeStr[@name='unanswered']");
        assertEquals(asked + unanswered, file.count("//CharacteristicDefinitions/*"));
        assertEquals(file.count("//CharacteristicItems/*"), file.count("//CharacteristicMeasurements/*"));
    }

    @ParameterizedTest
    @EnumSource
    void whateverHappenedInTheRun(Scene scene) {
        assertSound(scene.evidence());
    }

    @ParameterizedTest
    @EnumSource
    void ofEveryCheckOfAWholeDrawing(ExamplePart part) {
        for (String readings : List.of(part.passingReadings(), part.failingReadings(), part.readingsWithSlips())) {
            assertSound(Records.whole(part.plan(), readings));
        }
    }

    @ParameterizedTest
    @MethodSource("demoRuns")
    void afterEveryEntryOfADemoRun(DemoPart part, ReadingsFile readings) {
        for (int events = 0; events < readings.events().size(); events += 7) {
            assertSound(Records.walk(part, readings, events).evidence());
        }
        assertSound(Records.whole(part, readings));
    }

    static Stream<Arguments> demoRuns() {
        return Stream.of(DemoPart.values()).flatMap(part -> Stream.of(Records.passing(part), Records.failing(part))
                .map(readings -> Arguments.of(part, readings)));
    }
}
