package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.verdict.VerdictKind;

/** What a readings file says of its steps: in which order it comes, and under which numbers. */
class ReadingsFileTest {

    static final Plan PLAN = DemoPart.SCREW_CARRIER.plan();

    static final String HEAD =
            """
            format = 1
            part = "LG-2207"
            revision = "C"
            serial = "015"
            lot = "AB-7731"
            machine = "Lathe 4"
            by = "Setter 2"

            [[gauge]]
            id = "BG-2"
            kind = "bore-gauge"
            sense = "falls"

            [[gauge]]
            id = "MC-3"
            kind = "micrometer"
            """;

    @Test
    void aShortPassThatWasCutOnHasItsReasonBeforeTheCut() {
        List<Event> events = sample(
                        """
                [[step]]
                number = 9
                gauge = "MC-3"

                [[step.pass]]
                readings = ["48.2"]
                cut_on_these = "The other end is behind the centre."
                why = "cut"
                """)
                .events();
        int signed = events.indexOf(new StepEvent.CutOnThese(9, "The other end is behind the centre."));
        assertEquals(new StepEvent.PassBegun(9, StepEvent.PassBegun.Why.CUT), events.get(signed + 1));
    }

    @Test
    void temperaturesComeBeforeTheReadingsOfTheirPass() {
        ReadingsFile sample = sample(
                """
                [[step]]
                number = 13
                gauge = "BG-2"
                master = { mark = "MR-30", certified = "30.000", zero = "0.000" }
                readings = ["+0.010"]
                gauge_temperature = "20.50"
                part_temperature = "22.8"

                [[step.pass]]
                readings = ["-0.140"]
                why = "cut"
                part_temperature = "24"
                """);
        assertEquals(
                List.of(
                        new StepEvent.TemperatureTaken(13, MeasuredBody.PART, Degrees.of("24", CELSIUS)),
                        new StepEvent.ReadingTaken(13, "1.1", mm("-0.140")),
                        new StepEvent.PassBegun(13, StepEvent.PassBegun.Why.CUT),
                        new StepEvent.TemperatureTaken(13, MeasuredBody.PART, Degrees.of("22.8", CELSIUS)),
                        new StepEvent.TemperatureTaken(13, MeasuredBody.GAUGE, Degrees.of("20.50", CELSIUS)),
                        new StepEvent.ReadingTaken(13, "1.1", mm("+0.010"))),
                sample.events().stream()
                        .filter(event ->
                                !(event instanceof ShopEvent.GaugeKnown) && !(event instanceof StepEvent.GaugeSet))
                        .toList());
    }

    @Test
    void readingsComeAsTypedAfterTheGaugeIsSetAndEarlierPassesFirst() {
        ReadingsFile sample = sample(
                """
                [[step]]
                number = 13
                gauge = "BG-2"
                master = { mark = "MR-30", certified = "30.0010", zero = "-0.000" }
                readings = ["+0.010", "0.0"]
                note = "Rocked twice."
                concession = { by = "Inspector 1", reason = "It will do." }

                [[step.pass]]
                readings = ["+0.150"]
                why = "cut"

                [[step.pass]]
                readings = ["+0.151"]
                repair = { by = "Design office", reason = "Sleeved.", number = "A-7" }

                [[step.pass]]
                readings = ["+0.152"]
                rework = { by = "Inspector 1", reason = "Burr." }
                """);
        Gauge gauge = new Gauge("BG-2", GaugeKind.BORE_GAUGE, Optional.of(ReadingDirection.FALLS_WITH_SIZE));
        assertEquals(
                List.of(
                        new ShopEvent.GaugeKnown(gauge),
                        new ShopEvent.GaugeKnown(new Gauge("MC-3", GaugeKind.MICROMETER, Optional.empty())),
                        new StepEvent.GaugeSet(13, Setting.onMaster(gauge, "MR-30", mm("30.0010"), mm("-0.000"))),
                        new StepEvent.ReadingTaken(13, "1.1", mm("+0.150")),
                        new StepEvent.PassBegun(13, StepEvent.PassBegun.Why.CUT),
                        new StepEvent.ReadingTaken(13, "1.1", mm("+0.151")),
                        new StepEvent.DispositionSigned(
                                13, Disposition.REPAIR, "Sleeved.", "Design office", Optional.of("A-7")),
                        new StepEvent.ReadingTaken(13, "1.1", mm("+0.152")),
                        new StepEvent.DispositionSigned(13, Disposition.REWORK, "Burr.", "Inspector 1"),
                        new StepEvent.ReadingTaken(13, "1.1", mm("+0.010")),
                        new StepEvent.ReadingTaken(13, "2.1", mm("0.0")),
                        new StepEvent.NoteMade(13, "Rocked twice."),
                        new StepEvent.DispositionSigned(
                                13, Disposition.USE_AS_IS, "It will do.", "Inspector 1", Optional.of("None yet"))),
                sample.events());
    }

    @Test
    void aPlugIsMeasuredThenFelt() {
        ReadingsFile sample = sample(
                """
                [[step]]
                number = 14
                gauge = "MC-3"
                readings = ["29.993", "29.992"]
                answers = ["with-drag"]
                doubt = "Tighter than it should be."

                [close]
                by = "Inspector 1"
                meaning = "not accepted"

                [expect]
                14 = "fail"
                13 = "cut again"
                outcome = "not complete"
                """);
        assertEquals(
                List.of(
                        new StepEvent.ReadingTaken(14, "1.1", mm("29.993")),
                        new StepEvent.ReadingTaken(14, "2.1", mm("29.992")),
                        new StepEvent.Answered(14, Question.PLUG_FEELS, Answer.WITH_DRAG),
                        new StepEvent.DoubtFlagged(14, "Tighter than it should be."),
                        new Event.Closed("Inspector 1", SignedAs.NOT_ACCEPTED)),
                sample.events().subList(3, 8));
        assertEquals(Map.of(13, VerdictKind.CUT_AGAIN, 14, VerdictKind.FAIL), sample.expected());
        assertEquals(Optional.of(Outcome.NOT_COMPLETE), sample.outcome());
    }

    @Test
    void aFigureMayBeMeantAlthoughFarOffOrReadInTheOtherUnitOrStruckOut() {
        ReadingsFile sample = sample(
                """
                [[gauge]]
                id = "TR-40"
                kind = "limit-gauge"

                [[step]]
                number = 13
                gauge = "BG-2"
                master = { mark = "MR-30", certified = "1.18110", zero = "0", unit = "in" }
                readings = [{ reading = "0.0004", unit = "in" }, { reading = "0.7", struck = "gauge slipped" }, { reading = "7", keep = true }]
                part_temperature = [{ reading = "32.8", struck = "misread" }, "22.8"]

                [[step]]
                number = 24
                gauge = "TR-40"
                answers = ["yes", { answer = "stays-out", struck = "wrong key" }, "enters"]
                """);
        Gauge gauge = new Gauge("BG-2", GaugeKind.BORE_GAUGE, Optional.of(ReadingDirection.FALLS_WITH_SIZE));
        List<Event> events = List.of(
                new StepEvent.GaugeSet(13, Setting.onMaster(gauge, "MR-30", inch("1.18110"), inch("0"))),
                new StepEvent.TemperatureTaken(13, MeasuredBody.PART, Degrees.of("32.8", CELSIUS)),
                new Event.StruckOut(6, "misread"),
                new StepEvent.TemperatureTaken(13, MeasuredBody.PART, Degrees.of("22.8", CELSIUS)),
                new StepEvent.ReadingTaken(13, "1.1", inch("0.0004")),
                new StepEvent.ReadingTaken(13, "2.1", mm("0.7")),
                new Event.StruckOut(10, "gauge slipped"),
                new StepEvent.ReadingTaken(13, "2.1", mm("7")),
                new StepEvent.GaugeSet(24, Setting.direct(new Gauge("TR-40", GaugeKind.LIMIT_GAUGE, Optional.empty()))),
                new StepEvent.Answered(24, Question.GO_ENTERS, Answer.YES),
                new StepEvent.Answered(24, Question.NOT_GO_STAYS_OUT, Answer.YES),
                new Event.StruckOut(15, "wrong key"),
                new StepEvent.Answered(24, Question.NOT_GO_STAYS_OUT, Answer.NO));
        assertEquals(events, sample.events().subList(3, sample.events().size()));
        assertEquals(Set.of(10), sample.meant());
        assertEquals(
                new StepEvent.ReadingTaken(13, "2.1", mm("7")), sample.events().get(10));
    }

    /** A strike-out names its entry as a ledger would number it that holds nothing else. */
    @Test
    void whatIsStruckOutStandsInTheEntriesUnderTheNumberItIsStruckOutBy() {
        ReadingsFile sample = sample(
                """
                [[step]]
                number = 1
                answers = [{ answer = "no", struck = "wrong key" }, "yes"]
                """);
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry(1, "r", OffsetDateTime.MIN, "", sample.begun()));
        sample.events()
                .forEach(event -> entries.add(new Entry(entries.size() + 1, "r", OffsetDateTime.MIN, "", event)));
        Event.StruckOut struck = entries.stream()
                .map(Entry::event)
                .filter(Event.StruckOut.class::isInstance)
                .map(Event.StruckOut.class::cast)
                .findFirst()
                .orElseThrow();
        assertEquals(
                Answer.NO,
                ((StepEvent.Answered) entries.get((int) struck.entry() - 1).event()).answer());
    }

    @Test
    void anotherGaugeMayBeTakenInAPassOrForAPass() {
        ReadingsFile sample = sample(
                """
                [[gauge]]
                id = "BG-3"
                kind = "bore-gauge"
                sense = "rises"

                [[step]]
                number = 13
                gauge = "BG-2"
                master = { mark = "MR-30", certified = "30.000", zero = "0.000" }
                readings = ["+0.010", { gauge = "BG-3", master = { mark = "MR-31", certified = "30.001", zero = "0.01" } }, "+0.011"]

                [[step.pass]]
                gauge = "BG-3"
                master = { mark = "MR-30", certified = "30.000", zero = "0.000" }
                readings = ["-0.150"]
                why = "cut"
                """);
        assertEquals(
                List.of("BG-3 MR-30", "-0.150", "CUT", "BG-2 MR-30", "+0.010", "BG-3 MR-31", "+0.011"),
                sample.events().stream()
                        .skip(3)
                        .map(event -> event instanceof StepEvent.GaugeSet set
                                ? set.setting().gauge().id() + " "
                                        + set.setting().reference().orElseThrow()
                                : event instanceof StepEvent.ReadingTaken taken
                                        ? taken.typed().text()
                                        : ((StepEvent.PassBegun) event).why().name())
                        .toList());
    }

    private static Written inch(String figure) {
        return new Written(figure, Unit.INCH);
    }

    static ReadingsFile sample(String text) {
        return sample(HEAD, text);
    }

    static ReadingsFile sample(String head, String text) {
        return assertInstanceOf(SampleReading.Good.class, new SampleReader().read(head + "\n" + text, PLAN))
                .sample();
    }

    private static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }
}
