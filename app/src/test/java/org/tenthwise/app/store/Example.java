package org.tenthwise.app.store;

import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;
import static org.tenthwise.model.quantity.TemperatureScale.FAHRENHEIT;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Baseline;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ImportEvent;
import org.tenthwise.model.run.JoinedRun;
import org.tenthwise.model.run.MatterSettled;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.run.ReportEvent;
import org.tenthwise.model.run.ReportRole;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/** An invented event of every kind, with the text it is stored as. */
record Example(String kind, Event event, String json) {

    static final Gauge BORE_GAUGE =
            new Gauge("BG-04", GaugeKind.BORE_GAUGE, Optional.of(ReadingDirection.FALLS_WITH_SIZE));
    static final Gauge DEPTH_GAUGE = new Gauge("DG-01", GaugeKind.DEPTH_GAUGE, Optional.empty());
    private static final Gauge WIRE_MICROMETER = new Gauge("MW-2", GaugeKind.MICROMETER_OVER_WIRES, Optional.empty());

    private static final ImportEvent.Provenance ORIGIN =
            new ImportEvent.Provenance("ab".repeat(32), "cd".repeat(32), "abababab");

    static List<Example> all() {
        return Stream.of(others(), ShopExamples.all()).flatMap(List::stream).toList();
    }

    private static List<Example> others() {
        return List.of(
                new Example(
                        "begun",
                        new Event.Begun(
                                new PartId("LG-2207", "C"),
                                "0041",
                                "lot 9",
                                "Lathe 3",
                                new PlanSource("[part]\nnumber = \"LG-2207\"\n", "ab".repeat(32))),
                        """
                        {"part":{"number":"LG-2207","revision":"C"},"serial":"0041","lot":"lot 9","machine":"Lathe 3",\
                        "plan":{"text":"[part]\\nnumber = \\"LG-2207\\"\\n","sha256":"%s"}}"""
                                .formatted("ab".repeat(32))),
                new Example(
                        "begun",
                        new Event.Begun(
                                new PartId("LG-2207", "C"),
                                "0041",
                                "",
                                "Lathe 3",
                                new PlanSource("x", "ab".repeat(32)),
                                true),
                        """
                        {"part":{"number":"LG-2207","revision":"C"},"serial":"0041","lot":"","machine":"Lathe 3",\
                        "plan":{"text":"x","sha256":"%s"},"no-lot":true}"""
                                .formatted("ab".repeat(32))),
                new Example(
                        "begun",
                        new Event.Begun(
                                new PartId("LG-2207", "C"),
                                "0042",
                                "lot 9",
                                "Lathe 3",
                                new PlanSource("x", "ab".repeat(32)),
                                false,
                                Occasions.under(
                                        "order 118",
                                        List.of("change 12", "change 14"),
                                        Occasions.partialFirstArticle(
                                                new Baseline("LG-2207-B-0001", "cd".repeat(32)),
                                                "bore 0.02 wider",
                                                List.of(7, 3)))),
                        """
                        {"part":{"number":"LG-2207","revision":"C"},"serial":"0042","lot":"lot 9","machine":"Lathe 3",\
                        "plan":{"text":"x","sha256":"%s"},"occasion":{"purpose":"first-article-partial",\
                        "baseline":{"run":"LG-2207-B-0001","head":"%s"},"reason":"bore 0.02 wider","affected":[3,7],\
                        "order":"order 118","changes":["change 12","change 14"]}}"""
                                .formatted("ab".repeat(32), "cd".repeat(32))),
                new Example(
                        "begun",
                        new Event.Begun(
                                new PartId("LG-2207", "C"),
                                "0045",
                                "lot 9",
                                "Lathe 3",
                                new PlanSource("x", "ab".repeat(32)),
                                false,
                                Occasions.inProcess(5)),
                        """
                        {"part":{"number":"LG-2207","revision":"C"},"serial":"0045","lot":"lot 9","machine":"Lathe 3",\
                        "plan":{"text":"x","sha256":"%s"},"occasion":{"purpose":"in-process","piece":5}}"""
                                .formatted("ab".repeat(32))),
                new Example(
                        "cut-on-these",
                        new StepEvent.CutOnThese(3, "floor is behind a shoulder until it is cut"),
                        """
                        {"step":3,"reason":"floor is behind a shoulder until it is cut"}"""),
                new Example(
                        "gauge-chosen",
                        new StepEvent.GaugeChosen(3, "BG-04", Optional.of("RING-35")),
                        """
                        {"step":3,"mark":"BG-04","reference":"RING-35"}"""),
                new Example(
                        "gauge-chosen",
                        new StepEvent.GaugeChosen(4, "MW-2", Optional.empty()),
                        """
                        {"step":4,"mark":"MW-2"}"""),
                new Example(
                        "gauge-set",
                        new StepEvent.GaugeSet(3, Setting.onMaster(BORE_GAUGE, "RING-35", mm("35.0020"), mm("+0.00"))),
                        """
                        {"step":3,"setting":{"gauge":{"id":"BG-04","kind":"bore-gauge","sense":"falls-with-size"},\
                        "reference":"RING-35","certified":{"figure":"35.0020","unit":"mm"},\
                        "zero":{"figure":"+0.00","unit":"mm"}}}"""),
                new Example(
                        "gauge-set",
                        new StepEvent.GaugeSet(
                                4, Setting.overWires(WIRE_MICROMETER, "WIRES-7", new Written("0.10340", Unit.INCH))),
                        """
                        {"step":4,"setting":{"gauge":{"id":"MW-2","kind":"micrometer-over-wires"},"reference":"WIRES-7",\
                        "certified":{"figure":"0.10340","unit":"in"}}}"""),
                new Example(
                        "gauge-set",
                        new StepEvent.GaugeSet(5, Setting.direct(DEPTH_GAUGE)),
                        """
                        {"step":5,"setting":{"gauge":{"id":"DG-01","kind":"depth-gauge"}}}"""),
                new Example(
                        "reading-taken",
                        new StepEvent.ReadingTaken(3, "2.1", mm("35.010")),
                        """
                        {"step":3,"slot":"2.1","typed":{"figure":"35.010","unit":"mm"}}"""),
                new Example(
                        "temperature-taken",
                        new StepEvent.TemperatureTaken(3, MeasuredBody.PART, Degrees.of("22.40", CELSIUS)),
                        """
                        {"step":3,"of":"part","celsius":"22.40"}"""),
                new Example(
                        "temperature-taken",
                        new StepEvent.TemperatureTaken(3, MeasuredBody.GAUGE, Degrees.of("68.0", FAHRENHEIT)),
                        """
                        {"step":3,"of":"gauge","fahrenheit":"68.0"}"""),
                new Example(
                        "struck-out",
                        new Event.StruckOut(12, "gauge was not seated"),
                        """
                        {"entry":12,"reason":"gauge was not seated"}"""),
                new Example(
                        "answered",
                        new StepEvent.Answered(6, Question.PLUG_FEELS, Answer.WITH_DRAG),
                        """
                        {"step":6,"question":"plug-feels","answer":"with-drag"}"""),
                new Example(
                        "document-given",
                        new StepEvent.DocumentGiven(
                                41,
                                new Document(
                                        "CM-118",
                                        LocalDate.parse("2026-11-20"),
                                        Document.Says.FIGURES,
                                        "Measuring room",
                                        List.of(
                                                new Written("12.503", Unit.MILLIMETRE),
                                                new Written("0.4921", Unit.INCH)))),
                        """
                        {"step":41,"number":"CM-118","dated":"2026-11-20","says":"figures","by":"Measuring room",\
                        "figures":[{"figure":"12.503","unit":"mm"},{"figure":"0.4921","unit":"in"}]}"""),
                new Example(
                        "document-given",
                        new StepEvent.DocumentGiven(
                                42,
                                new Document(
                                        "",
                                        LocalDate.parse("2026-11-20"),
                                        Document.Says.NOT_YET,
                                        "Heat treatment",
                                        List.of())),
                        """
                        {"step":42,"dated":"2026-11-20","says":"not-yet","by":"Heat treatment"}"""),
                new Example(
                        "pass-begun",
                        new StepEvent.PassBegun(3, StepEvent.PassBegun.Why.MEASURED_AGAIN),
                        """
                        {"step":3,"why":"measured-again"}"""),
                new Example(
                        "doubt-flagged",
                        new StepEvent.DoubtFlagged(0, "chatter at the root"),
                        """
                        {"step":0,"words":"chatter at the root"}"""),
                new Example(
                        "note-made",
                        new StepEvent.NoteMade(3, "coolant 21 °C"),
                        """
                        {"step":3,"words":"coolant 21 °C"}"""),
                new Example(
                        "disposed",
                        new StepEvent.DispositionSigned(3, Disposition.USE_AS_IS, "no load there", "Q. Miller"),
                        """
                        {"step":3,"disposition":"use-as-is","reason":"no load there","signed-by":"Q. Miller"}"""),
                new Example(
                        "disposed",
                        new StepEvent.DispositionSigned(
                                3, Disposition.REPAIR, "sleeved", "Design office", Optional.of("A-7")),
                        """
                        {"step":3,"disposition":"repair","reason":"sleeved","signed-by":"Design office","number":"A-7"}"""),
                new Example(
                        "handed-over",
                        new Event.HandedOver("B. Fitter"),
                        """
                        {"to":"B. Fitter"}"""),
                new Example("taken-over", new Event.TakenOver(), "{}"),
                new Example(
                        "sealed",
                        new Event.Sealed(12, "0f".repeat(32), "a1".repeat(32), "MCow", "c2ln"),
                        """
                        {"place":12,"head":"%s","fingerprint":"%s","key":"MCow","signature":"c2ln"}"""
                                .formatted("0f".repeat(32), "a1".repeat(32))),
                new Example(
                        "report-drawn-up",
                        new ReportEvent.ReportDrawnUp(
                                new ReportAsked(
                                        "F-7",
                                        new PartId("LG-2207", "C"),
                                        ReportAsked.Edition.B,
                                        ReportAsked.Extent.PARTIAL,
                                        "new program",
                                        "LG-2207 B",
                                        List.of("12", "12A"),
                                        "PO-1",
                                        "Invented works",
                                        "V-3",
                                        "R-1 issue 2",
                                        List.of("ECN 12"),
                                        true,
                                        "lock gate"),
                                List.of(new JoinedRun("LG-2207-C-014", 75, "1a2b"))),
                        """
                        {"asked":{"identifier":"F-7","part":{"number":"LG-2207","revision":"C"},"edition":"b",\
                        "extent":"partial","reason":"new program","baseline":"LG-2207 B","affected":["12","12A"],\
                        "order":"PO-1","organization":"Invented works","supplier-code":"V-3","route":"R-1 issue 2",\
                        "changes":["ECN 12"],"assembly":true,"comments":"lock gate"},\
                        "runs":[{"run":"LG-2207-C-014","entries":75,"head":"1a2b"}]}"""),
                new Example(
                        "report-signed",
                        new ReportEvent.ReportSigned("F-7", ReportRole.APPROVED, "Q. Miller"),
                        """
                        {"report":"F-7","role":"approved","signed-by":"Q. Miller"}"""),
                new Example(
                        "matter-settled",
                        new MatterSettled(
                                new MatterSettled.SettledMatter(
                                        "nonconformance", "LG-2207-C-014", "13", "01".repeat(32)),
                                "Q. Miller",
                                "accepted by the customer",
                                "N-7"),
                        """
                        {"kind":"nonconformance","run":"LG-2207-C-014","about":"13","rests":"%s","signed-by":"Q. Miller",\
                        "words":"accepted by the customer","document":"N-7"}"""
                                .formatted("01".repeat(32))),
                new Example(
                        "put-away",
                        new Event.PutAway("Q. Miller", "begun twice"),
                        "{\"put-away-by\":\"Q. Miller\",\"reason\":\"begun twice\"}"),
                new Example("taken-up", new Event.TakenUp(), "{}"),
                new Example(
                        "imported",
                        new ImportEvent.Imported(
                                ORIGIN,
                                "ef".repeat(32),
                                true,
                                List.of(new ImportEvent.OfRun("LG-2207-C-013", 75, 80, "01".repeat(32)))),
                        """
                        {"origin":{"key":"%s","store":"%s","sign":"abababab"},"bundle":"%s","signer-known":true,\
                        "runs":[{"run":"LG-2207-C-013","entries":75,"last":80,"hash":"%s"}]}"""
                                .formatted("ab".repeat(32), "cd".repeat(32), "ef".repeat(32), "01".repeat(32))),
                new Example(
                        "imported",
                        new ImportEvent.Imported(ORIGIN, "ef".repeat(32), false, List.of()),
                        """
                        {"origin":{"key":"%s","store":"%s","sign":"abababab"},"bundle":"%s","runs":[]}"""
                                .formatted("ab".repeat(32), "cd".repeat(32), "ef".repeat(32))),
                new Example(
                        "import-lost",
                        new ImportEvent.Lost(ORIGIN, List.of("LG-2207-C-013")),
                        """
                        {"origin":{"key":"%s","store":"%s","sign":"abababab"},"runs":[{"run":"LG-2207-C-013"}]}"""
                                .formatted("ab".repeat(32), "cd".repeat(32))),
                new Example(
                        "signed",
                        new Event.Signed("Q. Miller", SignedAs.MEASURED_AGAIN),
                        """
                        {"signed-by":"Q. Miller","meaning":"measured-again"}"""),
                new Example(
                        "closed",
                        new Event.Closed("Q. Miller", "checked and complete"),
                        """
                        {"signed-by":"Q. Miller","meaning":"checked and complete"}"""));
    }

    private static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }

    @Override
    public String toString() {
        return kind + " " + json.substring(0, Math.min(40, json.length()));
    }
}
