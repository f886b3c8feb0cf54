package org.tenthwise.app.export.qif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.store.Occasions;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.run.Baseline;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/**
 * What a customer pulls out of a document, by paths of his own and nothing of the program that wrote it.
 *
 * <p>Source of the names: the schemas of QIF 3.0, ISO 23952:2020. U / k: JCGM 100:2008, 6.2.1.
 */
class QifReaderTest {

    private static final Plan PLAN = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "diameter"
            name = "Seat"
            requirement = "Ø30 0/-0.020"
            balloon = "7"
            sheet = "2"
            drawing_zone = "C4"
            designator = "key"
            method = "Micrometer."
            lower = 29.980
            upper = 30.000
            places = ["free end", "shoulder end"]
            cut_again = "too big"
            gauge_kind = "micrometer"
            uncertainty = "micrometer"
            guard_band = 0.002

            [[step]]
            number = 2
            operation = 10
            kind = "depth"
            name = "Depth"
            balloon = "8"
            method = "Depth gauge."
            lower = 10.0
            upper = 10.2
            places = ["one"]
            gauge_kind = "depth-gauge"

            [[uncertainty]]
            name = "micrometer"
            expanded = 0.003
            """);

    private static final String SEAT =
            "//DiameterCharacteristicMeasurement[CharacteristicItemId=//DiameterCharacteristicItem"
                    + "[CharacteristicDesignator/Designator='7']/@id]";
    private static final String STATUS = "/Status/CharacteristicStatusEnum";
    private static final String WHOLE = "//MeasurementResults/InspectionStatus/InspectionStatusEnum";

    private static Records.Walk begun(Occasion occasion) {
        return new Records.Walk(PLAN, "Setter 1")
                .add(new Event.Begun(PLAN.part(), "014", "L-1", "Lathe 4", PLAN.source(), false, occasion))
                .add(new StepEvent.GaugeSet(
                        1, Setting.direct(new Gauge("MC-1", GaugeKind.MICROMETER, Optional.empty()))))
                .add(new StepEvent.GaugeSet(
                        2, Setting.direct(new Gauge("DG-1", GaugeKind.DEPTH_GAUGE, Optional.empty()))));
    }

    private static Records.Walk begun() {
        return begun(Occasion.NOT_STATED);
    }

    private static StepEvent.ReadingTaken read(int step, String slot, String typed) {
        return new StepEvent.ReadingTaken(step, slot, new Written(typed, Unit.MILLIMETRE));
    }

    private static Records.Walk seat(String free, String shoulder) {
        return begun().add(read(1, "1.1", free)).add(read(1, "2.1", shoulder));
    }

    private static QifFile file(Records.Walk walk) {
        QifFile file = QifFile.of(walk.evidence());
        assertEquals(List.of(), file.faults());
        return file;
    }

    @Test
    void aCharacteristicIsFoundByItsBalloonWithLimitsPlaceMarkValueAndGauge() {
        QifFile file = file(seat("29.990", "29.985").add(read(2, "1.1", "10.10")));
        String item = "//DiameterCharacteristicItem[CharacteristicDesignator/Designator='7']";
        String nominal = "//DiameterCharacteristicNominal[@id=" + item + "/CharacteristicNominalId]";
        String definition = "//DiameterCharacteristicDefinition[@id=" + nominal + "/CharacteristicDefinitionId]";
        assertEquals("29.980", file.at(definition + "/Tolerance/MinValue"));
        assertEquals("30.000", file.at(definition + "/Tolerance/MaxValue"));
        assertEquals("true", file.at(definition + "/Tolerance/DefinedAsLimit"));
        assertEquals("30", file.at(nominal + "/TargetValue"));
        assertEquals("2", file.at(item + "/LocationOnDrawing/SheetNumber"));
        assertEquals("C4", file.at(item + "/LocationOnDrawing/DrawingZone"));
        assertEquals("KEY", file.at(item + "/CharacteristicDesignator/Criticality/LevelEnum"));
        assertEquals("PASS", file.at(SEAT + STATUS));
        assertEquals("29.985", file.at(SEAT + "/Value"));
        assertEquals("3", file.at(SEAT + "/Value/@decimalPlaces"));
        assertEquals("29.990", file.at(SEAT + "/MaxValue"));
        assertEquals("29.985", file.at(SEAT + "/MinValue"));
        assertEquals("MC-1", file.at("//ManualMeasurementDevice[@id=" + SEAT + "/MeasurementDeviceIds/Id]/Name"));
        assertEquals("0.001", file.at("//PrimaryUnits/LinearUnit/UnitConversion/Factor"));
        assertEquals("PASS", file.at(WHOLE));
        assertEquals("014", file.at("//ActualComponent/SerialNumber"));
        assertEquals("L-1", file.at("//ActualComponent/Traceability/LotNumber"));
        assertEquals("Lathe 4", file.at("//ManufacturingProcessTraceability/MachineIdentifier"));
        assertEquals("Setter 1", file.at("//InspectionOperator/Name"));
        assertEquals(PLAN.part().number(), file.at("//Part/ModelNumber"));
        assertEquals("Tenthwise", file.at("//Software/ApplicationName"));
        assertEquals("0.1.0", file.at("//Software/Version"));
    }

    /** U = 0.003 with k = 2 is u = 0.0015. */
    @Test
    void theStandardUncertaintyStandsAtTheValueAndTheExpandedOneBesideIt() {
        QifFile file = file(seat("29.990", "29.985"));
        assertEquals("0.0015", file.at(SEAT + "/Value/@combinedUncertainty"));
        assertEquals("0", file.at(SEAT + "/Value/@meanError"));
        assertEquals("0.003 mm", file.at("//AttributeStr[@name='expanded-uncertainty']/@value"));
        assertEquals("2", file.at("//AttributeStr[@name='coverage-factor']/@value"));
    }

    @Test
    void whatIsHalfReadHasNoValueAndTheRunIsNoPass() {
        QifFile file = file(begun().add(read(1, "1.1", "29.990")));
        assertEquals("NOT_ANALYZED", file.at(SEAT + STATUS));
        assertEquals("", file.at(SEAT + "/Value"));
        assertEquals(0, file.count("//CharacteristicMeasurements/*/MaxValue"));
        assertEquals("UNKNOWN", file.at(WHOLE));
        assertEquals("UNKNOWN", file.at("//ActualComponent/Status/InspectionStatusEnum"));
        assertTrue(file.at(SEAT + "/Attributes/AttributeStr[@name='reading-1']/@value")
                .contains("29.990 mm"));
    }

    @Test
    void whatWasStruckOutIsANoteWithItsReasonAndNoResult() {
        Records.Walk walk = begun().add(read(1, "1.1", "29.955"));
        QifFile file = file(walk.add(new Event.StruckOut(walk.seq(), "Chip under the anvil."))
                .add(read(1, "1.1", "29.990"))
                .add(read(1, "2.1", "29.985")));
        assertEquals("PASS", file.at(SEAT + STATUS));
        assertFalse(file.all("//CharacteristicMeasurements//*").contains("29.955"));
        String note = file.at("//NotedEvent[@id=" + SEAT + "/NotedEventIds/Id]/Description");
        assertTrue(note.startsWith("struck-out"), note);
        assertTrue(note.contains("reading=29.955 mm") && note.contains("reason=Chip under the anvil."), note);
        assertFalse(file.at(SEAT + "/Attributes").contains("29.955"));
        assertEquals(0, file.count("//AttributeStr[contains(@value, '29.955')]"));
    }

    @Test
    void whatWasReadBeforeACutIsANoteAndTheSizeAfterItTheValue() {
        QifFile file = file(seat("30.120", "30.118")
                .add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT))
                .add(read(1, "1.1", "29.990"))
                .add(read(1, "2.1", "29.988")));
        assertEquals("29.988", file.at(SEAT + "/Value"));
        assertEquals(
                2,
                file.count("//NotedEvent[starts-with(Description, 'earlier-pass') and contains(Description, '30.1')]"));
        assertEquals(List.of("1", "2"), file.all("//NotedEvent/SequenceNumber"));
    }

    @Test
    void whatCanStillBeCutIsReworkAndOutOnceTheRunIsClosed() {
        assertEquals("REWORK", file(seat("30.120", "30.118")).at(SEAT + STATUS));
        QifFile closed = file(seat("30.120", "30.118").add(new Event.Closed("Inspector 1", SignedAs.NOT_ACCEPTED)));
        assertEquals("FAIL", closed.at(SEAT + STATUS));
        assertEquals("FAIL", closed.at(WHOLE));
        assertEquals(0, closed.count("//SignOffs/Employee"));
    }

    @Test
    void whatLiesInTheGuardBandIsIndeterminate() {
        QifFile file = file(seat("29.990", "29.981"));
        assertEquals("INDETERMINATE", file.at(SEAT + STATUS));
        assertEquals("29.981", file.at(SEAT + "/Value"));
        assertEquals("UNKNOWN", file.at(WHOLE));
    }

    @Test
    void whatIsUsedByConcessionStaysOutWithItsNumber() {
        QifFile file = file(seat("29.970", "29.985")
                .add(new StepEvent.DispositionSigned(
                        1, Disposition.USE_AS_IS, "Agreed.", "Design office", Optional.of("C-12")))
                .add(read(2, "1.1", "10.10")));
        assertEquals("FAIL", file.at(SEAT + STATUS));
        assertEquals("C-12", file.at(SEAT + "/NonConformanceDesignator"));
        assertEquals("FAIL", file.at(WHOLE));
        assertEquals("conforms-with-concessions", file.at("//AttributeStr[@name='outcome']/@value"));
    }

    @Test
    void aPartThatConformsAndWasRefusedIsNoPass() {
        QifFile file = file(seat("29.990", "29.985")
                .add(read(2, "1.1", "10.10"))
                .add(new Event.Closed("Inspector 1", SignedAs.NOT_ACCEPTED)));
        assertEquals("UNKNOWN", file.at(WHOLE));
        assertEquals("Inspector 1", file.at("//AttributeStr[@name='signed-against']/@value"));
    }

    @Test
    void whoAcceptedItSignsOff() {
        QifFile file = file(seat("29.990", "29.985")
                .add(read(2, "1.1", "10.10"))
                .add(new Event.Closed("Inspector 1", SignedAs.ACCEPTED)));
        assertEquals("Inspector 1", file.at("/QIFDocument/Version/SignOffs/Employee/Name"));
        assertFalse(file.at("//InspectionEnd").isEmpty());
        assertEquals(file.at("//InspectionEnd"), file.at("/QIFDocument/Version/TimeCreated"));
    }

    @Test
    void aFirstArticleSaysSoWithItsOrderAndItsReason() {
        QifFile full = file(begun(Occasions.under("O-77", List.of("ECN 5"), Occasions.fullFirstArticle("new part"))));
        assertEquals("FAI_Full", full.at("//InspectionMode"));
        assertEquals("O-77", full.at("//InspectionTraceability/OrderNumber"));
        assertEquals("O-77", full.at("//ManufacturingProcessTraceability/Job"));
        assertEquals("ECN 5", full.at("//ActualComponent/AdditionalChanges"));
        assertEquals(0, full.count("//PartialInspection"));
        Baseline before = new Baseline("WB-1-B-001", "ab12");
        QifFile partial = file(begun(Occasions.partialFirstArticle(before, "new tool", List.of(1))));
        assertEquals("FAI_Partial", partial.at("//InspectionMode"));
        assertEquals("WB-1-B-001", partial.at("//PartialInspection/BaselineProductNumber"));
        assertEquals("new tool", partial.at("//PartialInspection/ReasonForPartialInspection"));
        assertEquals("ab12", partial.at("//AttributeStr[@name='baseline-head']/@value"));
        assertEquals(0, file(begun(Occasion.of(Purpose.FIRST_PIECE))).count("//InspectionMode"));
        assertEquals(0, file(begun()).count("//InspectionMode"));
    }

    @Test
    void whatThisKindOfRunLeavesOutIsThereAndNotAnalysed() {
        QifFile file = file(begun(Occasions.partialFirstArticle(new Baseline("R", "ab"), "new tool", List.of(1)))
                .add(read(1, "1.1", "29.990"))
                .add(read(1, "2.1", "29.985")));
        assertEquals(2, file.count("//CharacteristicDefinitions/*"));
        assertEquals("PASS", file.at(SEAT + STATUS));
        assertEquals("NOT_ANALYZED", file.at("//DepthCharacteristicMeasurement" + STATUS));
        assertEquals("UNKNOWN", file.at(WHOLE));
    }

    @Test
    void theSameStateIsTheSameToTheByteAndALaterOneIsAnother() {
        Records.Walk walk = seat("29.990", "29.985");
        QifFile first = file(walk);
        assertEquals(first.text(), file(seat("29.990", "29.985")).text());
        QifFile later = file(walk.add(read(2, "1.1", "10.10")));
        for (String id : List.of("/QIFDocument/QPId", "//ThisResultsInstanceQPId")) {
            assertFalse(first.at(id).isEmpty());
            assertNotEquals(first.at(id), later.at(id));
        }
        assertNotEquals(first.at("/QIFDocument/QPId"), first.at("//ThisResultsInstanceQPId"));
        assertEquals(first.all("//CharacteristicItems/*//UUID"), later.all("//CharacteristicItems/*//UUID"));
        assertEquals(first.at("//Part/UUID"), later.at("//Part/UUID"));
        assertEquals(walk.evidence().head().hash(), later.at("//AttributeStr[@name='run-hash']/@value"));
    }

    @Test
    void noSignThatXmlCannotHoldSpoilsTheDocument() {
        QifFile file =
                file(begun().add(new StepEvent.NoteMade(1, "a\u0000b\u001Bc\uFFFFd\uD800e <&> \"q\" \uD83D\uDE00")));
        assertTrue(
                file.at("//NotedEvent/Description").contains("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe <&> \"q\" \uD83D\uDE00"));
    }

    @ParameterizedTest
    @EnumSource
    void everyValueThatWasTypedStandsAsItWasTyped(ExamplePart part) {
        Evidence evidence = Records.whole(part.plan(), part.passingReadings());
        QifFile file = QifFile.of(evidence);
        int compared = 0;
        for (Line line : evidence.sheet().characteristics()) {
            Optional<Measured> typed = line.finding()
                    .deciding()
                    .filter(measured -> measured.isAsRead()
                            && measured.reading()
                                    .typed()
                                    .unit()
                                    .equals(line.step().limits().orElseThrow().unit())
                            && !line.step().drawing().instances().areSeveral());
            if (typed.isPresent() && !typed.get().reading().typed().unit().isOfAngle()) {
                String balloon = part.plan().balloon(line.step()).orElseThrow().text();
                assertEquals(
                        typed.get().reading().typed().figure().toPlainString(),
                        file.at("//CharacteristicMeasurements/*[CharacteristicItemId=//CharacteristicItems/*"
                                + "[CharacteristicDesignator/Designator='" + balloon + "']/@id]/Value"),
                        line.step().name());
                compared++;
            }
        }
        assertTrue(compared > 10, "only %d values were compared".formatted(compared));
    }
}
