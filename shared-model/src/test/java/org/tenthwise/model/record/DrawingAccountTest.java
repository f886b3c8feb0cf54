package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.size;
import static org.tenthwise.model.record.Bench.with;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.BalloonGap;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Instances;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

class DrawingAccountTest {

    private static final AskedCheck LOOK = new AskedCheck.VisualCheck("Edges broken.");

    private final Bench bench = new Bench();

    private static OnDrawing balloon(String number, Instances instances) {
        return new OnDrawing(
                Optional.of(new BalloonNumber(number)),
                Optional.of("1"),
                Optional.of("C4"),
                "as drawn",
                Optional.empty(),
                instances,
                Optional.empty());
    }

    private static OnDrawing balloon(String number) {
        return balloon(number, Instances.ONE);
    }

    private static Instances four(Instances.Report report) {
        return new Instances(4, Optional.empty(), report);
    }

    /** 10.00 to 10.02 at so many places; it cannot be cut again. */
    private static SizeCheck holes(int places) {
        return new SizeCheck(
                Feature.BORE,
                Limits.between(mm("10.00"), mm("10.02")),
                places(places),
                1,
                Combine.EACH,
                false,
                mm("0"),
                with(GaugeKind.CALIPER));
    }

    private DrawingAccount account() {
        return DrawingAccount.of(bench.sheet());
    }

    /** Balloon, which of them, least and greatest, verdict. */
    private List<String> told() {
        return account().lines().stream().map(DrawingAccountTest::told).toList();
    }

    private static String told(AccountLine line) {
        String number = line.balloon().map(BalloonNumber::text).orElse("-");
        return line.match(new AccountLine.Cases<String>() {
            @Override
            public String checked(AccountLine.Checked checked) {
                String which = checked.instances().stream().map(String::valueOf).collect(Collectors.joining(","));
                String sizes = checked.least()
                        .map(least ->
                                typed(least) + ".." + typed(checked.greatest().orElseThrow()))
                        .orElse("");
                return String.join(
                        " ", number, "[" + which + "]", sizes, line.standing().toString());
            }

            @Override
            public String unanswered(AccountLine.Unanswered unanswered) {
                return number + " unanswered " + line.standing();
            }

            @Override
            public String notInThisRun(AccountLine.NotInThisRun left) {
                return number + " not in this run";
            }
        });
    }

    private static String typed(Measured measured) {
        return measured.reading().typed().figure().toPlainString();
    }

    private Bench looked(int step) {
        return bench.did(new StepEvent.Answered(step, Question.LOOKS_RIGHT, Answer.YES));
    }

    @Test
    void linesStandInTheOrderOfTheDrawingAndNotOfTheWork() {
        bench.step(LOOK).drawn(balloon("12A"), StepClass.DRAWING);
        bench.step(LOOK).drawn(OnDrawing.NOTHING, StepClass.DRAWING);
        bench.step(LOOK).drawn(balloon("3.10"), StepClass.DRAWING);
        bench.step(LOOK).drawn(balloon("3.2"), StepClass.DRAWING);
        bench.step(LOOK).drawn(balloon("12"), StepClass.DRAWING);
        bench.step(LOOK).drawn(OnDrawing.NOTHING, StepClass.SET_UP);
        looked(5);
        assertEquals(List.of("3.2 []  OPEN", "3.10 []  OPEN", "12 []  PASS", "12A []  OPEN", "- []  OPEN"), told());
        assertEquals(List.of(new BalloonGap("", 4, 11)), account().gaps());
    }

    @Test
    void inAPlanWithoutBalloonsTheNumberOfACheckIsItsBalloon() {
        bench.step(LOOK).drawn(OnDrawing.NOTHING, StepClass.SET_UP);
        bench.step(LOOK).step(LOOK);
        assertEquals(List.of("2 []  OPEN", "3 []  OPEN"), told());
        assertEquals(List.of(), account().gaps());
    }

    @Test
    void theCheckOfTheDrawingAnswersABalloonAndNotTheOneOnTheWay() {
        bench.step(holes(1)).drawn(balloon("7"), StepClass.IN_PROCESS);
        bench.step(holes(1)).drawn(balloon("7"), StepClass.DRAWING);
        bench.read(1, "10.01");
        assertEquals(List.of("7 []  OPEN"), told());
        bench.read(2, "10.03");
        assertEquals(List.of("7 [] 10.03..10.03 FAIL"), told());
    }

    @Test
    void aBalloonThatOnlyChecksOnTheWayNameIsOpen() {
        bench.step(holes(1)).drawn(balloon("7a"), StepClass.IN_PROCESS);
        bench.step(holes(1)).drawn(balloon("7A"), StepClass.IN_PROCESS);
        bench.step(LOOK).drawn(balloon("8"), StepClass.DRAWING);
        bench.read(1, "10.01").read(2, "10.01");
        assertEquals(List.of("7a unanswered OPEN", "8 []  OPEN"), told());
    }

    /** All that the plan asks has passed, and of balloon 7 nobody knows what the finished part has. */
    @Test
    void whereABalloonIsOpenThePartIsNotComplete() {
        bench.step(holes(1)).drawn(balloon("7"), StepClass.IN_PROCESS);
        bench.step(holes(1)).drawn(balloon("8"), StepClass.DRAWING);
        bench.read(1, "10.01").read(2, "10.01");
        assertEquals(
                List.of(new BalloonNumber("7")),
                DrawingAccount.unansweredBy(bench.sheet().plan()));
        assertEquals(Outcome.NOT_COMPLETE, bench.sheet().outcome());
        bench.step(holes(1)).drawn(balloon("7"), StepClass.DRAWING);
        bench.read(3, "10.01");
        assertEquals(Outcome.CONFORMS, bench.sheet().outcome());
    }

    @Test
    void eachOfSeveralHasALineAndOneThatIsHalfReadIsOpen() {
        bench.step(holes(8)).drawn(balloon("5", four(Instances.Report.EACH)), StepClass.DRAWING);
        bench.read(1, "10.00", "10.01", "10.01", "10.021", "10.02");
        assertEquals(
                List.of(
                        "5 [1] 10.00..10.01 PASS",
                        "5 [2] 10.01..10.021 FAIL",
                        "5 [3] 10.02..10.02 OPEN",
                        "5 [4]  OPEN"),
                told());
    }

    @Test
    void leastAndGreatestLeaveOutNoneThatIsOut() {
        bench.step(holes(4)).drawn(balloon("5", four(Instances.Report.LEAST_AND_GREATEST)), StepClass.DRAWING);
        assertEquals(List.of("5 [1,2,3,4]  OPEN"), told());
        bench.read(1, "10.01", "10.03", "10.00");
        assertEquals(List.of("5 [1,3,4] 10.00..10.01 OPEN", "5 [2] 10.03..10.03 FAIL"), told());
    }

    @Test
    void leastAndGreatestOfAllThatPassed() {
        bench.step(holes(4)).drawn(balloon("5", four(Instances.Report.LEAST_AND_GREATEST)), StepClass.DRAWING);
        bench.read(1, "10.01", "10.02", "10.00", "10.01");
        assertEquals(List.of("5 [1,2,3,4] 10.00..10.02 PASS"), told());
    }

    @Test
    void whatIsAgainstTheCheckIsAgainstEachOfThem() {
        bench.in(Bench.BRONZE)
                .step(size(Feature.BORE, "200.000", "200.010", Combine.EACH, 2))
                .drawn(balloon("5", new Instances(2, Optional.empty(), Instances.Report.EACH)), StepClass.DRAWING);
        bench.read(1, "200.004", "200.005");
        assertEquals(VerdictKind.OPEN, bench.finding(1).verdict().standing());
        assertEquals(List.of("5 [1] 200.004..200.004 OPEN", "5 [2] 200.005..200.005 OPEN"), told());
    }

    @Test
    void ofWhatIsOnlyAskedOneAnswerIsForAll() {
        bench.step(LOOK).drawn(balloon("5", four(Instances.Report.EACH)), StepClass.DRAWING);
        looked(1);
        assertEquals(List.of("5 [1,2,3,4]  PASS"), told());
    }

    @Test
    void oneOfFourSaysWhich() {
        bench.step(holes(1))
                .drawn(balloon("5", new Instances(4, Optional.of(3), Instances.Report.EACH)), StepClass.DRAWING);
        assertEquals(List.of("5 [3]  OPEN"), told());
    }

    @Property
    void noInstancePassesThatIsNotReadAndInsideAndNoneIsLeftOut(
            @ForAll @Size(max = 6) List<@IntRange(min = 9_995, max = 10_025) Integer> read, @ForAll boolean each) {
        Bench fresh = new Bench();
        Instances three =
                new Instances(3, Optional.empty(), each ? Instances.Report.EACH : Instances.Report.LEAST_AND_GREATEST);
        fresh.step(holes(6)).drawn(balloon("5", three), StepClass.DRAWING);
        fresh.read(
                1,
                read.stream()
                        .map(size -> "%d.%03d".formatted(size / 1000, size % 1000))
                        .toArray(String[]::new));
        List<AccountLine.Checked> lines = DrawingAccount.of(fresh.sheet()).lines().stream()
                .map(AccountLine.Checked.class::cast)
                .toList();
        assertEquals(
                List.of(1, 2, 3),
                lines.stream()
                        .flatMap(line -> line.instances().stream())
                        .sorted()
                        .toList());
        for (AccountLine.Checked line : lines) {
            for (int number : line.instances()) {
                boolean in = IntStream.of(2 * number - 2, 2 * number - 1)
                        .allMatch(slot -> slot < read.size() && read.get(slot) >= 10_000 && read.get(slot) <= 10_020);
                assertTrue(line.standing() != VerdictKind.PASS || in, read + " " + line.standing());
            }
        }
        assertEquals(
                fresh.finding(1).verdict().passed(),
                lines.stream().allMatch(line -> line.standing() == VerdictKind.PASS));
    }
}
