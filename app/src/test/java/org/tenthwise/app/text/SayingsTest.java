package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.export.Records;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.record.TemperatureEffect;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** What the screens, the record and the command line say about the screw carrier of the demo. Figures by hand. */
class SayingsTest {

    private static final Words WORDS = Words.of(Locale.ENGLISH);
    private static final Plan PLAN = DemoPart.SCREW_CARRIER.plan();

    private final List<Entry> entries = new ArrayList<>();

    @ParameterizedTest
    @CsvSource({"Go on, Go on.", "Go on., Go on.", "Go on!, Go on!", "Why not?, Why not?"})
    void whatAPersonTypedEndsWithOneFullStop(String typed, String said) {
        assertEquals(said, WORDS.sentence(typed));
    }

    @ParameterizedTest
    @CsvSource({"Anvil worn, Anvil worn", "Anvil worn., Anvil worn", "Anvil worn?, Anvil worn?", "Drill..., Drill..."})
    void aSentenceThatGoesOnHasNoFullStopInTheMiddle(String typed, String said) {
        assertEquals(said, Sentences.within(typed));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        # step | readings               | verdict, distance                          | what next
        8      | 48.31                  | Pass 0.01 mm inside the lower limit.       |
        8      | 48.7                   | Cut again 0.10 mm above the upper limit.   | 0.25 mm still to come off the diameter.
        8      | 48.2                   | Fail 0.10 mm below the lower limit.        | Stop cutting here until it is clear that the drawing can still be met; then sign to carry on.
        8      | 48.60                  | Pass Exactly on the upper limit.           |
        9      | 47.998 47.99           | Open 2 more to go.                       |
        9      | 47.99 47.99 47.99 47.998 | Unproven 0.002 mm inside the upper limit. | Too near the limit to be proven. Too little for this tool to cut, or for a spring pass: put in a sharper insert and touch it off first, or leave it as it is and get a disposition. Or measure again with a better gauge.
        12     | 45.9                   | Cut again 0.10 mm below the lower limit.   | Go 0.15 mm deeper.
        13     | 0.012 0.011 0.013 0.015 | Pass 0.006 mm inside the upper limit.     |
        13     | 0.022                  | Fail 0.001 mm above the upper limit.       | Stop cutting here and measure again. If it stays out, it needs a disposition.
        26     | 11.980 11.980 11.980 11.980 11.980 11.980 | Cut again 0.020 mm below the lower limit.  | 0.040 mm still to come off the width.
        14     | 29.993 29.992          | Open One answer to go.                     |
        26     | 11.980                 | Cut again 0.020 mm below the lower limit.  | 5 places are still to be read before a cut is worked out.
        """)
    void theVerdictItsDistanceAndWhatNext(int step, String readings, String verdict, String next) {
        Finding found = read(step, readings.split(" "));
        Sentences sentences = new Sentences(WORDS);
        assertEquals(verdict, sentences.standing(found) + " " + sentences.distance(found));
        assertEquals(Optional.ofNullable(next).orElse(""), new Advice(WORDS).next(sheet().line(step)));
    }

    /** Run-out at the chuck, a size on the way and one of the drawing. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        3  | the plan, as given there
        20 | the plan, as given there
        5  | the drawing, as given there
        6  | Ø30 H7, ISO 286-2
        1  | ''
        """)
    void whatTheDrawingDoesNotAskForHasItsLimitsFromThePlan(int number, String from) {
        Step step = ExamplePart.WINCH_SHAFT.plan().step(number);
        assertEquals(from, new Sentences(WORDS).limitsFrom(step));
    }

    @Test
    void ofTwoTheWorseDecidesOfMoreTheWorst() {
        assertEquals("Both must be inside; the worse decides.", WORDS.say("combined.each", 2, ""));
        assertEquals("All 12 (LMC) must be inside; the worst decides.", WORDS.say("combined.each", 12, " (LMC)"));
        assertEquals(
                "Beide müssen innerhalb liegen; der schlechtere entscheidet.",
                Words.of(Locale.GERMAN).say("combined.each", 2, ""));
    }

    /**
     * By hand: width = 2 (r (1 + √2) − height), so twice the slip; angle by 0.0005 ÷ 0.2 ÷ (1 + 0.185²) rad = 0.14°.
     * Off by 41.575 − 41.34 and 17.221 − 17.06: 2 √(0.235² + 0.161²) = 0.570 as the position, of 0.23 and 0.16 it were
     * 0.560.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        HOIST_SCREW_BUSH | 38 | A slip of 0.0005 in moves it: face to the top of the pin by 0.001 in.
        HOIST_SCREW_BUSH | 39 | A slip of 0.0005 in moves it: over both rollers, on the plate by 0.14°
        WINCH_SHAFT      | 11 | 5: X +0.235, Y +0.161 off.
        """)
    void whatIsSaidBesideASizeComesToIt(ExamplePart part, int number, String beside) {
        Sheet sheet = Records.whole(part.plan(), part.failingReadings()).sheet();
        String said = new Remarks(WORDS).of(sheet.line(number).finding()).toString();
        assertTrue(said.contains(beside), said);
    }

    /** At 10 from the face 47.995, at 31 of it 47.985: nothing of an outside goes in anywhere. */
    @Test
    void anOutsideTapersFromItsFace() {
        assertTrue(new Remarks(WORDS)
                .of(read(9, "47.995", "47.995", "47.985", "47.985"))
                .contains("Tapers by 0.010 mm, smaller away from the face."));
        assertTrue(new Remarks(WORDS)
                .of(read(9, "47.985", "47.985", "47.995", "47.995"))
                .contains("Tapers by 0.010 mm, larger away from the face."));
    }

    /** Four readings of a pure run-out towards jaw 1: by the half difference of opposites the jaw goes in by 0.018. */
    @Test
    void aRunOutSaysWhichJawGoesInAndWhatTheIndicatorShows() {
        String[] towardsOne = {"0.036", "0.031", "0.018", "0.005", "0.000", "0.005", "0.018", "0.031"};
        Finding found =
                read(4, Stream.of(towardsOne, towardsOne).flatMap(Stream::of).toArray(String[]::new));
        assertEquals("0.016 mm above the limit.", new Sentences(WORDS).distance(found));
        assertEquals(
                "Drive off and unable to start. One jaw at a time. If the needle is in a bore, make "
                        + "every move the other way. Near the jaws: Ease jaw 3, tighten jaw 1 until "
                        + "the needle over it has dropped 0.018. Check that all jaws are tight. Back to near "
                        + "the jaws: sweep both again.",
                new Advice(WORDS).next(sheet().line(4)));
    }

    /**
     * 2 √(0.001²/12 + 0.00075² + 0.002²/3 + 0.001²/3 + 0.000243² + 0.0008²) = 0.00347, and 0.021 / 0.0070 = 3.0, by
     * hand.
     */
    @Test
    void aWayOfMeasuringSaysHowSureItIs() {
        assertEquals(
                "±0.0035 mm, k = 2.00: bore gauge on a ring. The tolerance is 3.0 times as wide.",
                new Sentences(WORDS).uncertainty(DemoPart.SCREW_CARRIER.plan().step(13)));
        assertEquals(
                "",
                new Sentences(WORDS).uncertainty(DemoPart.SCREW_CARRIER.plan().step(12)));
    }

    @Test
    void aBoreThatWidensGoingInSaysSo() {
        Finding found = read(13, "0.011", "0.013", "0.015", "0.014");
        // means 30.012 at 8 and 30.0145 at 38, half-up to the places read; at 8 the two ways differ by 0.002
        assertEquals(
                List.of(
                        "Part 20 °C, gauge 20 °C. By these no correction is needed.",
                        "All 4 must be inside; the worst decides.",
                        "Tapers by 0.003 mm, larger going in.",
                        "0.002 mm difference between the two ways."),
                new Remarks(WORDS).of(found));
    }

    @Test
    void wiresSayAllThreeFormulas() {
        Finding found = read(21, "40.742", "40.742", "40.742");
        String formulas = new Remarks(WORDS).of(found).get(2);
        // simple: E = M + 1.866025 P − 4.863703 W = 40.742 + 13.062175 − 17.606605 = 36.197570
        assertEquals("36.198", formulas.replaceAll(".*without the lead angle ([0-9.]+),.*", "$1"));
    }

    /** A plug 0.030 smaller than its bore that drags meets a burr or dirt first of all. */
    @Test
    void aPlugThatDragsIsWipedAndOfferedAgainBeforeAnybodyIsAsked() {
        read(13, "0.015", "0.015", "0.015", "0.015");
        read(14, "29.985", "29.985");
        add(new StepEvent.Answered(14, Question.PLUG_FEELS, Answer.WITH_DRAG));
        assertEquals(
                "Wipe bore and plug, take off every burr, and try the plug again. If it stays so, it "
                        + "needs a disposition; do not cut for it unasked.",
                new Advice(WORDS).next(sheet().line(14)));
    }

    /** Bore 30.015, plug 29.930: 0.085, over the 0.035 that is allowed. No burr does that. */
    @Test
    void aPlugThatIsTooLooseIsMeasuredAgain() {
        read(13, "0.015", "0.015", "0.015", "0.015");
        read(14, "29.985", "29.930");
        assertEquals(
                "Stop cutting here: wipe bore and plug, and measure both again. If it stays so, it needs a "
                        + "disposition.",
                new Advice(WORDS).next(sheet().line(14)));
    }

    @Test
    void anAnsweredStepSaysWhatWasAnswered() {
        add(new StepEvent.Answered(24, Question.GO_ENTERS, Answer.YES));
        add(new StepEvent.Answered(24, Question.NOT_GO_STAYS_OUT, Answer.YES));
        assertEquals("go enters, not-go stops", new Sentences(WORDS).value(finding(24)));
        add(new StepEvent.Answered(24, Question.NOT_GO_STAYS_OUT, Answer.NO));
        assertEquals("go enters, not-go goes too far", new Sentences(WORDS).value(finding(24)));
    }

    /** A row of the list has no room for both ends of a gauge. */
    @Test
    void inAListStandsTheAnswerThatDecides() {
        Sentences sentences = new Sentences(WORDS);
        assertEquals("", sentences.listed(finding(24)));
        add(new StepEvent.Answered(24, Question.GO_ENTERS, Answer.YES));
        assertEquals("go enters", sentences.listed(finding(24)));
        add(new StepEvent.Answered(24, Question.NOT_GO_STAYS_OUT, Answer.YES));
        assertEquals("not-go stops", sentences.listed(finding(24)));
        add(new StepEvent.Answered(24, Question.GO_ENTERS, Answer.NO));
        assertEquals("go does not enter", sentences.listed(finding(24)));
    }

    /** Nobody gives a part up on what was read, seen or tried once. */
    @Test
    void whatFailsIsLookedAtAgainBeforeAnybodyDecides() {
        read(13, "0.022");
        assertEquals(
                "Stop cutting here and measure again. If it stays out, it needs a disposition.",
                new Advice(WORDS).next(sheet().line(13)));
        add(new StepEvent.PassBegun(13, StepEvent.PassBegun.Why.MEASURED_AGAIN));
        read(13, "0.022");
        assertEquals("Stop cutting here. It needs a disposition.", new Advice(WORDS).next(sheet().line(13)));
        add(new StepEvent.Answered(23, Question.LOOKS_RIGHT, Answer.NO));
        assertEquals(
                "Stop cutting here and look again. If it stays so, it needs a disposition.",
                new Advice(WORDS).next(sheet().line(23)));
        add(new StepEvent.Answered(24, Question.GO_ENTERS, Answer.NO));
        assertEquals(
                "Stop cutting here. Wipe gauge and work, take off every burr, and try again. If it stays so, it"
                        + " needs a disposition.",
                new Advice(WORDS).next(sheet().line(24)));
    }

    @Test
    void ofWhatPassedItIsSaidHowManyWereRepaired() {
        read(13, "30.010", "30.010", "30.010", "30.025");
        add(new StepEvent.DispositionSigned(13, Disposition.REPAIR, "Sleeved.", "Design office", Optional.of("A-7")));
        assertEquals(
                "0 of 24 characteristics passed; also 0 of 9 set-up checks, 0 of 2 in-process checks.",
                new OutcomeWords(WORDS).counts(sheet()));
        read(13, "0.010", "0.010", "0.010", "0.010");
        assertEquals(
                "1 of 24 characteristics passed, 1 of them after a repair and so under concession; also 0 of 9 "
                        + "set-up checks, 0 of 2 in-process checks.",
                new OutcomeWords(WORDS).counts(sheet()));
        assertEquals("Repaired: it counts among the concessions.", new Sentences(WORDS).repaired(sheet().line(13)));
    }

    @Test
    void anUnfinishedRunSaysHowMuchIsOpen() {
        add(new StepEvent.Answered(1, Question.CONFIRMED, Answer.YES));
        assertEquals(
                "Not complete: 24 of 24 characteristics, 8 set-up checks, 2 in-process checks not settled. Not signed.",
                new Sentences(WORDS).outcome(sheet()));
    }

    /** With part and gauge at 20 °C, where that is asked. */
    private Finding read(int step, String... readings) {
        PLAN.step(step)
                .check()
                .means()
                .ifPresent(means -> add(new StepEvent.GaugeSet(
                        step,
                        switch (means.kind().reference()) {
                            case NONE -> Setting.direct(new Gauge("G", means.kind(), Optional.empty()));
                            case MASTER ->
                                Setting.onMaster(
                                        new Gauge(
                                                "G",
                                                GaugeKind.BORE_GAUGE,
                                                Optional.of(ReadingDirection.RISES_WITH_SIZE)),
                                        "ring",
                                        mm("30.000"),
                                        mm("0"));
                            case WIRES ->
                                Setting.overWires(
                                        new Gauge("G", GaugeKind.MICROMETER_OVER_WIRES, Optional.empty()),
                                        "set",
                                        mm("3.620"));
                        })));
        if (TemperatureEffect.isNeeded(PLAN, PLAN.step(step))) {
            add(new StepEvent.TemperatureTaken(step, MeasuredBody.PART, CELSIUS.reference()));
            add(new StepEvent.TemperatureTaken(step, MeasuredBody.GAUGE, CELSIUS.reference()));
        }
        List<Slot> slots = PLAN.step(step).check().slots();
        for (int i = 0; i < readings.length; i++) {
            add(new StepEvent.ReadingTaken(step, slots.get(i).key(), mm(readings[i])));
        }
        return finding(step);
    }

    private Finding finding(int step) {
        return sheet().line(step).finding();
    }

    private Sheet sheet() {
        List<Entry> all = Stream.concat(
                        Stream.of(entry(1, new Event.Begun(PLAN.part(), "014", "", "", PLAN.source()))),
                        entries.stream())
                .toList();
        return Sheet.of(PLAN, new Run(all));
    }

    private void add(Event event) {
        entries.add(entry(entries.size() + 2L, event));
    }

    private static Entry entry(long seq, Event event) {
        return new Entry(seq, "r", OffsetDateTime.parse("2026-11-25T07:31:00+01:00"), "Setter 1", event);
    }

    private static Written mm(String figure) {
        return Written.of(new BigDecimal(figure), Unit.MILLIMETRE);
    }
}
