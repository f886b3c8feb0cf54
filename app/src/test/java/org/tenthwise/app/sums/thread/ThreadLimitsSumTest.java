package org.tenthwise.app.sums.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.sums.Asking.at;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

/** What is asked and how it is answered; the figures of the standards are run with the published cases. */
class ThreadLimitsSumTest {

    private static final String UNC = "form=unified; diameter=0.25; tpi=20; class=2A";

    private final Asking sums = new Asking();

    /** ASME B1.1, tables of limits, from memory. */
    @Test
    void anInchThreadIsAnsweredToFourPlaces() {
        SumResult answer = sums.answer(Unit.INCH, "thread-limits", UNC);
        assertEquals(
                List.of("0.2489", "0.2408", "0.2164", "0.2127", "0.0011", "formula"),
                List.of(
                        at(answer, "major_max"),
                        at(answer, "major_min"),
                        at(answer, "pitch_max"),
                        at(answer, "pitch_min"),
                        at(answer, "allowance"),
                        at(answer, "standing")));
        assertTrue(Asking.found(answer, "minor_min").isEmpty());
        assertTrue(answer.basis().toString().startsWith("ASME B1.1"));
    }

    /** ASME B1.13M, external limits of class 6g. */
    @Test
    void aMetricThreadIsAnsweredToThreePlaces() {
        SumResult answer =
                sums.answer(Unit.MILLIMETRE, "thread-limits", "form=metric; diameter=10; pitch=1.5; class=6g");
        assertEquals(
                List.of("9.968", "9.732", "8.994", "8.862", "8.344", "7.938", "0.032", "table"),
                List.of(
                        at(answer, "major_max"),
                        at(answer, "major_min"),
                        at(answer, "pitch_max"),
                        at(answer, "pitch_min"),
                        at(answer, "minor_max"),
                        at(answer, "minor_min"),
                        at(answer, "allowance"),
                        at(answer, "standing")));
    }

    /** 0.2164 in is 5.49656 mm: the printed figure, not one rounded anew. */
    @Test
    void inTheOtherUnitThePrintedLimitsAreKept() {
        SumResult answer =
                sums.answer(Unit.MILLIMETRE, "thread-limits", "form=unified; diameter=6.35; tpi=20; class=2A");
        assertEquals("5.496560", at(answer, "pitch_max"));
        assertEquals("5.402580", at(answer, "pitch_min"));
    }

    @ParameterizedTest
    @CsvSource({
        "designation=1/4-20UNC-2A, " + UNC,
        "form=unified; diameter=0.25; pitch=0.05; class=2A; series=UNC; starts=1; side=external, " + UNC,
        "form=acme; diameter=0.375; pitch=0.083333; class=2G; side=external, designation=3/8-12ACME-2G; side=external"
    })
    void theSameThreadHasTheSameLimitsHoweverItIsGiven(String one, String other) {
        SumResult otherwise = sums.answer(Unit.INCH, "thread-limits", other);
        SumResult found = sums.answer(Unit.INCH, "thread-limits", one);
        assertEquals(otherwise.written(), found.written());
        assertEquals(otherwise.notes(), found.notes());
    }

    @ParameterizedTest
    @CsvSource({
        "form=acme; diameter=1; tpi=8; class=2G; side=external",
        "form=stub-acme; diameter=1.5; tpi=8; class=2G; side=internal",
        "form=stub-acme; diameter=1; tpi=5; class=3G; side=external",
        "form=acme; diameter=1; tpi=5; starts=2; class=2G; side=external"
    })
    void aProposalAsksForTheDrawing(String given) {
        SumResult answer = sums.answer(Unit.INCH, "thread-limits", given);
        assertEquals("proposal", at(answer, "standing"));
        assertTrue(
                answer.notes().get(0).toString().contains("calculated only; check them against the drawing"),
                answer.notes()::toString);
    }

    @Test
    void aListedThreadDoesNot() {
        SumResult answer = sums.answer(Unit.INCH, "thread-limits", "designation=3/8-12ACME-2G; side=internal");
        assertEquals("formula", at(answer, "standing"));
        assertFalse(answer.notes().stream().anyMatch(note -> note.toString().contains("proposal")));
    }

    /** Where the figures of a standard are recalled, the answer says so; where printed limits agree, it does not. */
    @ParameterizedTest
    @CsvSource({
        "designation=Tr40x7-7H, true",
        "designation=Tr40x7-7e, false",
        "designation=Tr100x12-7e, true",
        "form=stub-acme; diameter=1; tpi=5; class=2G; side=external, true",
        "form=acme; diameter=1; tpi=5; class=2G; side=external, false",
        "designation=M10-6g, false"
    })
    void recalledFiguresAreSaidToBe(String given, boolean recalled) {
        List<Message> notes = sums.answer(Unit.INCH, "thread-limits", given).notes();
        assertEquals(
                recalled, notes.stream().anyMatch(note -> note.toString().contains("from memory")), notes::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            form=acme; diameter=1; tpi=5; class=2G                             | side        | side is missing
            form=acme; diameter=1; tpi=5; class=2A; side=external              | class       | class is "2A": general purpose Acme threads have 2G 3G 4G
            form=unified; diameter=0.25; tpi=20; class=2A; side=internal       | side        | class is "2A": that is a class of external threads, and the side is internal
            form=unified; diameter=0.25; tpi=20; class=2A; series=UNF          | series      | series is "UNF": a thread of 0.25 in and 20 threads per inch is in the series UNC
            form=unified; diameter=0.25; tpi=20; class=2A; series=BSW          | series      | series is "BSW": it is one of UNC, UNF, UNEF, UN, UNS
            form=acme; diameter=1; tpi=5; class=2G; side=external; series=UNC  | series      | series is "UNC": only unified threads have a series
            form=unified; diameter=0.04; tpi=20; class=2A                      | diameter    | diameter is 0.04: it leaves no core in a thread with tpi 20
            form=unified; diameter=0.25; class=2A                              | pitch       | pitch is missing
            form=unified; diameter=0.25; tpi=20; pitch=0.05; class=2A          | pitch       | pitch is 0.05 and tpi is 20: give one of them
            form=unified; diameter=0.25; tpi=0; class=2A                       | tpi         | tpi is 0: it must be more than zero
            form=unified; diameter=0.25; tpi=1e25; class=2A                    | tpi         | tpi is 1e25: no thread is cut that fine
            form=pipe; diameter=0.25; tpi=20; class=2A                         | form        | form is "pipe": it is one of acme, metric, stub-acme, trapezoidal, unified
            form=acme; diameter=7; tpi=2; class=2G; side=external              | class       | diameter is 7 in: ASME B1.5 has allowances up to 5.5 in
            designation=M10-6g; class=6g                                       | class       | class is 6g: the designation already gives it
            designation=R1/2                                                   | designation | "R1/2" is not a thread designation with its class
            form=unified; diameter=0.25; tpi=20; class=2A; starts=0            | starts      | starts is 0
            """)
    void whatDoesNotGoTogetherIsRefusedByItsKey(String given, String key, String words) {
        Problem problem = sums.problem(Unit.INCH, "thread-limits", given);
        assertEquals(Optional.of(key), problem.key());
        assertTrue(
                problem.why().toString().startsWith(words), () -> problem.why().toString());
    }
}
