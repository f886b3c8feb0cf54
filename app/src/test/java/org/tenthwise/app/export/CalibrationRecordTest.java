package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;

/** Certificates of gauges in the records for programs. Read on 25 November 2026. */
public class CalibrationRecordTest {

    private static final Plan PLAN = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "bore"
            name = "Bore"
            drawing = "20 H7"
            method = "Two ways."
            lower = 20.000
            upper = 20.021
            places = ["0°", "90°"]
            gauge_kind = "bore-gauge"
            master = 20.000

            [[step]]
            number = 2
            operation = 10
            kind = "diameter"
            name = "Outside"
            drawing = "Ø30"
            method = "Micrometer."
            lower = 29.980
            upper = 30.000
            places = ["free end"]
            gauge_kind = "micrometer"
            """);

    private static final Gauge BORE_GAUGE =
            new Gauge("BG-1", GaugeKind.BORE_GAUGE, Optional.of(ReadingDirection.FALLS_WITH_SIZE));
    private static final Gauge MICROMETER = new Gauge("MC-1", GaugeKind.MICROMETER, Optional.empty());

    /** The bore gauge is in date, its ring was due the day before, and nobody said anything of the micrometer. */
    public static Evidence evidence() {
        return new Records.Walk(PLAN, "Setter 1")
                .add(new Event.Begun(PLAN.part(), "1", "L-1", "Lathe 4", PLAN.source()))
                .add(known(GaugeOrMaster.of(BORE_GAUGE), "=K-1", "2026-11-25"))
                .add(known(GaugeOrMaster.master("R-20"), "K-2", "2026-11-24"))
                .add(new StepEvent.GaugeSet(1, Setting.onMaster(BORE_GAUGE, "R-20", mm("20.001"), mm("0.000"))))
                .add(new StepEvent.ReadingTaken(1, "1.1", mm("-0.011")))
                .add(new StepEvent.ReadingTaken(1, "2.1", mm("-0.012")))
                .add(new StepEvent.GaugeSet(2, Setting.direct(MICROMETER)))
                .add(new StepEvent.ReadingTaken(2, "1.1", mm("29.990")))
                .evidence();
    }

    private static Event known(GaugeOrMaster what, String certificate, String due) {
        return new ShopEvent.CalibrationKnown(
                what, new Calibration(certificate, Optional.of(LocalDate.parse(due))), false);
    }

    private static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }

    @Test
    void everyRowOfTheTableSaysByWhatItWasReadAndWhetherThatWasOver() {
        List<CSVRecord> read = ReadBack.rows(evidence()).stream()
                .filter(row -> !row.get("reading").isEmpty())
                .toList();
        assertEquals(
                List.of("'=K-1 2026-11-25 K-2 2026-11-24 yes", "'=K-1 2026-11-25 K-2 2026-11-24 yes", ""),
                read.stream()
                        .map(row -> String.join(
                                        " ",
                                        row.get("gauge-certificate"),
                                        row.get("gauge-due"),
                                        row.get("set-on-certificate"),
                                        row.get("set-on-due"),
                                        row.get("past-due"))
                                .strip())
                        .toList());
    }

    @Test
    void theRecordForProgramsSaysItOfGaugeAndMasterEach() {
        JsonNode json = ReadBack.json(evidence());
        List<JsonNode> readings = json.findParents("set-on");
        assertEquals("=K-1", readings.get(0).at("/gauge/certificate").asText());
        assertFalse(readings.get(0).at("/gauge/past-due").booleanValue());
        assertEquals("2026-11-24", readings.get(0).at("/set-on/due").asText());
        assertEquals(true, readings.get(0).at("/set-on/past-due").booleanValue());
        assertEquals(
                List.of(false, false, true),
                json.findValues("gauge").stream()
                        .map(gauge -> gauge.path("certificate").isMissingNode())
                        .toList());
    }

    @Test
    void theRecordForProgramsIsWhatItsEntriesComeTo() {
        assertEquals(
                Optional.empty(),
                ReadBack.check(ReadBack.text(new JsonRecord(), evidence()))
                        .found()
                        .fault());
    }
}
