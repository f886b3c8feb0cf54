package org.tenthwise.model.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/**
 * What changes a finding, and what does not: every kind of event is one or the other, a new one must be entered here.
 */
class ChangesTest {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-25T07:31:00+01:00");
    private static final Gauge MICROMETER = new Gauge("MC-1", GaugeKind.MICROMETER, Optional.empty());
    private static final Entry BEGUN = entry(1, Happened.BEGUN);
    private static final Entry SET = entry(2, new StepEvent.GaugeSet(7, Setting.direct(MICROMETER)));
    private static final Entry READ =
            entry(3, new StepEvent.ReadingTaken(7, "1.1", new Written("30.010", Unit.MILLIMETRE)));
    private static final Entry NOTED = entry(4, new StepEvent.NoteMade(7, "cool"));

    static List<Event> thoseThatDo() {
        return List.of(
                READ.event(),
                new StepEvent.TemperatureTaken(7, MeasuredBody.PART, Degrees.of("21", CELSIUS)),
                new StepEvent.Answered(7, Question.CONFIRMED, Answer.YES),
                new StepEvent.DocumentGiven(
                        7,
                        new Document(
                                "CM-1",
                                LocalDate.parse("2026-11-24"),
                                Document.Says.CONFORMS,
                                "Measuring room",
                                List.of())),
                new Event.StruckOut(READ.seq(), "slipped"),
                new Event.StruckOut(SET.seq(), "wrong ring"),
                new StepEvent.PassBegun(7, StepEvent.PassBegun.Why.CUT),
                new StepEvent.DispositionSigned(7, Disposition.REWORK, "burr", "Inspector 1"),
                new StepEvent.DispositionSigned(7, Disposition.REPAIR, "sleeved", "Design office"));
    }

    /** What a newer release means by its entries nobody knows: such a run never conforms, whatever they change. */
    static List<Event> thoseThatDoNot() {
        return List.of(
                new Event.Begun(new PartId("X-1", "A"), "1", "", "", new PlanSource("", "")),
                new ShopEvent.GaugeKnown(MICROMETER),
                new ShopEvent.CalibrationKnown(
                        GaugeOrMaster.of(MICROMETER),
                        new Calibration("K-1", Optional.of(LocalDate.parse("2027-03-31"))),
                        true),
                new StepEvent.GaugeChosen(7, "MC-2", Optional.empty()),
                SET.event(),
                new ShopEvent.MachineKnown("Lathe 3", Register.RADIUS, Aim.ByLimits.THIRD),
                new StepEvent.CutOnThese(7, "third place is under the clamp"),
                new StepEvent.DoubtFlagged(7, "chatter"),
                NOTED.event(),
                new Event.StruckOut(NOTED.seq(), "said of another part"),
                new StepEvent.DispositionSigned(7, Disposition.USE_AS_IS, "will do", "Inspector 1"),
                new StepEvent.DispositionSigned(7, Disposition.SCRAP, "thin", "Inspector 1"),
                new Event.HandedOver("Setter 2"),
                new Event.Signed("Inspector 1", SignedAs.ACCEPTED),
                new Event.Closed("Inspector 1", SignedAs.ACCEPTED),
                new Event.PutAway("Setter 2", "begun twice"),
                new Event.TakenUp(),
                new Event.TakenOver(),
                new Event.Sealed(3, "0f", "a1", "key", "signature"),
                new ImportEvent.Imported(
                        new ImportEvent.Provenance("ab", "cd", "ab"),
                        "ef",
                        false,
                        List.of(new ImportEvent.OfRun("LG-2207-C-013", 75, 80, "01"))),
                new ImportEvent.Lost(new ImportEvent.Provenance("ab", "cd", "ab"), List.of("LG-2207-C-013")),
                new ReportEvent.ReportDrawnUp(
                        new ReportAsked(
                                "F-1",
                                new PartId("X-1", "A"),
                                ReportAsked.Edition.C,
                                ReportAsked.Extent.FULL,
                                "first run",
                                "",
                                List.of(),
                                "",
                                "",
                                "",
                                "",
                                List.of(),
                                false,
                                ""),
                        List.of(new JoinedRun("r", 3, "ab"))),
                new ReportEvent.ReportSigned("F-1", ReportRole.VERIFIED, "Inspector 1"),
                new MatterSettled(
                        new MatterSettled.SettledMatter("concession", "r", "7", "ab"), "Inspector 1", "told", ""),
                new Event.Unknown("from-later", "{}"));
    }

    @ParameterizedTest
    @MethodSource("thoseThatDo")
    void whatIsFoundAtAStepChangesIt(Event event) {
        assertEquals(Optional.of(7), changed(event));
    }

    @ParameterizedTest
    @MethodSource("thoseThatDoNot")
    void whatIsSaidOrMadeReadyDoesNot(Event event) {
        assertEquals(Optional.empty(), changed(event));
    }

    @Test
    void everyKindOfEventIsAmongThem() {
        assertEquals(
                kinds(Event.class).collect(Collectors.toSet()),
                Stream.concat(thoseThatDo().stream(), thoseThatDoNot().stream())
                        .map(Object::getClass)
                        .collect(Collectors.toSet()));
    }

    private static Stream<Class<?>> kinds(Class<?> of) {
        return of.isSealed() ? Stream.of(of.getPermittedSubclasses()).flatMap(ChangesTest::kinds) : Stream.of(of);
    }

    private static Optional<Integer> changed(Event event) {
        return new Changes(new Run(List.of(BEGUN, SET, READ, NOTED))).step(entry(5, event));
    }

    private static Entry entry(long seq, Event event) {
        return new Entry(seq, "r", AT, "Setter 1", event);
    }
}
