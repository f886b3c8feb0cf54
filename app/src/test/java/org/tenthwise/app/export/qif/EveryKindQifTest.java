package org.tenthwise.app.export.qif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.export.pdf.Scene;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/** Every kind of check there is has its characteristic. */
class EveryKindQifTest {

    private static final Plan RUN_OUT = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "run-out"
            class = "drawing"
            name = "Run-out"
            method = "Indicator."
            limit = 0.02
            gauge_kind = "dial-indicator"

            [[step]]
            number = 2
            operation = 10
            kind = "confirm"
            class = "drawing"
            name = "Packed"
            what = "Packed dry."
            """);

    private static Stream<Evidence> runs() {
        return Stream.concat(
                Stream.of(ExamplePart.values())
                        .flatMap(part -> Stream.of(part.passingReadings(), part.failingReadings())
                                .map(readings -> Records.whole(part.plan(), readings))),
                Stream.concat(Stream.of(Scene.values()).map(Scene::evidence), Stream.of(runOut().evidence())));
    }

    private static Records.Walk runOut() {
        return new Records.Walk(RUN_OUT, "Setter 1")
                .add(new Event.Begun(RUN_OUT.part(), "1", "L-1", "Lathe 4", RUN_OUT.source()))
                .add(new StepEvent.GaugeSet(
                        1, Setting.direct(new Gauge("IN-1", GaugeKind.DIAL_INDICATOR, Optional.empty()))))
                .add(new StepEvent.ReadingTaken(1, "highest", new Written("0.011", Unit.MILLIMETRE)))
                .add(new StepEvent.ReadingTaken(1, "lowest", new Written("-0.002", Unit.MILLIMETRE)));
    }

    @Test
    void noKindOfCheckIsLeftOut() {
        Set<String> checks = new TreeSet<>();
        Set<String> kinds = new TreeSet<>();
        runs().forEach(evidence -> {
            evidence.sheet().plan().steps().stream()
                    .filter(Step::isOfDrawing)
                    .forEach(step -> checks.add(step.check().getClass().getSimpleName()));
            QifFile file = QifFile.of(evidence);
            kinds.addAll(file.names("//CharacteristicMeasurements/*"));
        });
        assertEquals(
                Set.of(
                        "AngleCheck",
                        "CalculatedCheck",
                        "Confirm",
                        "DocumentCheck",
                        "GoNotGo",
                        "IndicatedCheck",
                        "OverWiresCheck",
                        "PlugFitCheck",
                        "PositionCheck",
                        "RunOutCheck",
                        "ScaleCheck",
                        "SizeCheck",
                        "VisualCheck",
                        "WorkedCheck"),
                checks);
        assertTrue(
                kinds.containsAll(Stream.of(
                                "Angle",
                                "CircularRunout",
                                "Depth",
                                "Diameter",
                                "Flatness",
                                "Length",
                                "Perpendicularity",
                                "Position",
                                "Radius",
                                "Symmetry",
                                "Thickness",
                                "TotalRunout",
                                "UserDefinedAngular",
                                "UserDefinedAttribute",
                                "UserDefinedLinear",
                                "UserDefinedUnit",
                                "Width")
                        .map(name -> name + "CharacteristicMeasurement")
                        .toList()),
                kinds::toString);
    }

    /** 0.011 less -0.002, by hand. */
    @Test
    void aRunOutOfTheDrawingIsTheWholeMovement() {
        QifFile file = QifFile.of(runOut().evidence());
        assertEquals("0.013", file.at("//CircularRunoutCharacteristicMeasurement/Value"));
        assertEquals("0.02", file.at("//CircularRunoutCharacteristicDefinition/ToleranceValue"));
    }
}
