package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.mm;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.ProofOf;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Specified;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Refused;

/** The bench stands on 25 November 2026. */
class DocumentFindingTest {

    private static final String DAY = "2026-11-25";

    private static DocumentCheck check(ProofOf proof, Optional<Limits> limits) {
        return new DocumentCheck(proof, "Certificate", "Measuring room", limits, Specified.NOTHING);
    }

    /** Two features between 12.490 and 12.510, proven elsewhere. */
    private static Bench measured() {
        return new Bench()
                .several(check(ProofOf.ELSEWHERE, Optional.of(Limits.between(mm("12.490"), mm("12.510")))), 2);
    }

    private static StepEvent.DocumentGiven given(int step, String dated, Document.Says says, String... figures) {
        return new StepEvent.DocumentGiven(
                step,
                new Document(
                        "CM-118",
                        LocalDate.parse(dated),
                        says,
                        "Measuring room",
                        Stream.of(figures).map(Bench::mm).toList()));
    }

    private static VerdictKind standing(Bench bench, int step) {
        return bench.finding(step).verdict().standing();
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-25, CONFORMS, PASS",
        "2026-11-24, DOES_NOT_CONFORM, FAIL",
        "2026-11-24, NOT_YET, OPEN",
        "2026-11-26, CONFORMS, OPEN", // a day that is still to come
        "2026-11-26, DOES_NOT_CONFORM, OPEN"
    })
    void aDocumentSaysWhatItSaysOnceItsDayHasCome(String dated, Document.Says says, VerdictKind standing) {
        Bench bench =
                new Bench().step(check(ProofOf.DOCUMENT, Optional.empty())).did(given(1, dated, says));
        assertEquals(standing, standing(bench, 1));
    }

    @Test
    void nothingIsProvenWithoutOne() {
        Bench bench = new Bench().step(check(ProofOf.DOCUMENT, Optional.empty()));
        assertEquals(VerdictKind.OPEN, standing(bench, 1));
        assertEquals(1, bench.finding(1).missing());
    }

    @ParameterizedTest
    @CsvSource({
        "FIGURES, 12.490, 12.510, PASS", // on both limits
        "FIGURES, 12.503, 12.511, FAIL",
        "FIGURES, 12.4899, 12.500, FAIL",
        "CONFORMS, 12.503, 12.499, PASS",
        "CONFORMS, 12.503, 12.511, FAIL", // it says that it conforms, and its figures say otherwise
        "DOES_NOT_CONFORM, 12.503, 12.499, FAIL", // what else is wrong with it, its figures do not say
        "NOT_YET, 12.503, 12.499, OPEN"
    })
    void figuresAreSetAgainstTheLimitsWhateverIsSaid(
            Document.Says says, String first, String second, VerdictKind standing) {
        assertEquals(standing, standing(measured().did(given(1, DAY, says, first, second)), 1));
    }

    @Test
    void theFigureThatDecidesIsTheOneFarthestOut() {
        Finding finding = measured()
                .did(given(1, DAY, Document.Says.FIGURES, "12.511", "12.520"))
                .finding(1);
        assertEquals(Optional.of(mm("12.520").length()), finding.value());
        assertEquals(
                mm("0.010").length(), finding.verdict().margin().orElseThrow().distance());
    }

    @ParameterizedTest
    @ValueSource(strings = {"12.500", "12.500 12.500 12.500"})
    void tooFewFiguresOrTooManyProveNothing(String figures) {
        Bench bench = measured().did(given(1, DAY, Document.Says.FIGURES, figures.split(" ")));
        assertEquals(VerdictKind.OPEN, standing(bench, 1));
        assertEquals(1, bench.finding(1).missing());
        assertEquals(
                VerdictKind.OPEN,
                standing(measured().did(given(1, DAY, Document.Says.CONFORMS, figures.split(" "))), 1));
    }

    @Test
    void oneFigureOfTwoThatIsOutFailsAlready() {
        assertEquals(VerdictKind.FAIL, standing(measured().did(given(1, DAY, Document.Says.FIGURES, "12.600")), 1));
    }

    @Test
    void figuresWithoutLimitsOrOfAnotherKindProveNothing() {
        Bench unlimited = new Bench().step(check(ProofOf.ELSEWHERE, Optional.empty()));
        assertEquals(VerdictKind.OPEN, standing(unlimited.did(given(1, DAY, Document.Says.FIGURES, "12.500")), 1));
        StepEvent.DocumentGiven angles = new StepEvent.DocumentGiven(
                1,
                new Document(
                        "CM-118",
                        LocalDate.parse(DAY),
                        Document.Says.CONFORMS,
                        "Measuring room",
                        List.of(new Written("12.5", Unit.DEGREE), new Written("12.5", Unit.DEGREE))));
        assertEquals(VerdictKind.OPEN, standing(measured().did(angles), 1));
    }

    @Test
    void inchesAreJudgedExactly() {
        StepEvent.DocumentGiven inches = new StepEvent.DocumentGiven(
                1,
                new Document(
                        "CM-118",
                        LocalDate.parse(DAY),
                        Document.Says.FIGURES,
                        "Measuring room",
                        List.of(new Written("0.4921", Unit.INCH), new Written("0.4926", Unit.INCH))));
        // 0.4921 x 25.4 = 12.49934; 0.4926 x 25.4 = 12.51204: by hand
        assertEquals(VerdictKind.FAIL, standing(measured().did(inches), 1));
    }

    @Test
    void oneThatIsStruckOutProvesNothingAndDoesNotBringBackTheOneBefore() {
        Bench bench = new Bench()
                .step(check(ProofOf.DOCUMENT, Optional.empty()))
                .did(given(1, DAY, Document.Says.CONFORMS))
                .did(given(1, DAY, Document.Says.CONFORMS));
        bench.did(new Event.StruckOut(bench.last(), "of another part"));
        assertEquals(VerdictKind.OPEN, standing(bench, 1));
        assertEquals(VerdictKind.PASS, standing(bench.did(given(1, DAY, Document.Says.CONFORMS)), 1));
    }

    @Test
    void oneThatComesTakesThePlaceOfTheOneAwaited() {
        Bench bench = new Bench()
                .step(check(ProofOf.MATERIAL, Optional.empty()))
                .did(given(1, DAY, Document.Says.NOT_YET))
                .did(given(1, DAY, Document.Says.CONFORMS));
        assertEquals(VerdictKind.PASS, standing(bench, 1));
        assertFalse(PassStory.of(bench.sheet().run(), bench.sheet().line(1))
                .get(0)
                .documents()
                .get(0)
                .counts());
    }

    @Test
    void whatIsProvenElsewhereIsNeverHeldNorAskedInTurnAndKeepsThePartNotComplete() {
        Bench bench = new Bench()
                .step(new AskedCheck.VisualCheck("No chatter"), 1)
                .step(check(ProofOf.ELSEWHERE, Optional.empty()));
        assertFalse(bench.sheet().line(2).held());
        bench.did(new StepEvent.Answered(1, Question.LOOKS_RIGHT, Answer.YES));
        assertEquals(Optional.empty(), bench.sheet().firstOpen());
        assertEquals(Outcome.NOT_COMPLETE, bench.sheet().outcome());
        assertEquals(
                Outcome.CONFORMS,
                bench.did(given(2, DAY, Document.Says.CONFORMS)).sheet().outcome());
    }

    @Test
    void oneInTheOrderOfWorkIsHeldAsEveryCheck() {
        Bench bench = new Bench()
                .step(new AskedCheck.VisualCheck("No chatter"), 1)
                .step(check(ProofOf.DOCUMENT, Optional.empty()));
        assertTrue(bench.sheet().line(2).held());
    }

    /** What was made and measured here is not another by it; what the part comes to may be. */
    @Test
    void aDocumentEndsAnAcceptanceAndNoSignatureForWhatWasMeasured() {
        Bench bench = new Bench()
                .step(check(ProofOf.ELSEWHERE, Optional.empty()))
                .did(given(1, DAY, Document.Says.CONFORMS))
                .did(new Event.Closed("Setter 1", SignedAs.MACHINED_AND_MEASURED))
                .did(new Event.Signed("Inspector 1", SignedAs.ACCEPTED))
                .did(new Event.StruckOut(2, "of another part"));
        assertFalse(bench.sheet().run().signatures().get(0).lapsed());
        assertTrue(bench.sheet().run().signatures().get(1).lapsed());
        bench.did(given(1, DAY, Document.Says.CONFORMS));
        assertFalse(bench.sheet().run().signatures().get(0).lapsed());
    }

    @Test
    void whoEntersADocumentHasMeasuredNothing() {
        Bench bench =
                new Bench().step(check(ProofOf.ELSEWHERE, Optional.empty())).did(given(1, DAY, Document.Says.CONFORMS));
        assertFalse(bench.sheet().run().wasReadBy("Setter 1"));
    }

    @Test
    void oneWithoutNumberOrAuthorIsNone() {
        LocalDate day = LocalDate.parse(DAY);
        assertThrows(Refused.class, () -> new Document(" ", day, Document.Says.CONFORMS, "Supplier", List.of()));
        assertThrows(Refused.class, () -> new Document("C-1", day, Document.Says.CONFORMS, "", List.of()));
        assertThrows(Refused.class, () -> new Document("C-1", day, Document.Says.FIGURES, "Supplier", List.of()));
        assertEquals("", new Document("", day, Document.Says.NOT_YET, "Supplier", List.of()).number());
    }

    @Property(tries = 300)
    void itPassesByFiguresOnlyWhereAllOfThemAreInside(
            @ForAll @IntRange(min = 12_470, max = 12_530) int first,
            @ForAll @IntRange(min = 12_470, max = 12_530) int second) {
        boolean inside = Math.min(first, second) >= 12_490 && Math.max(first, second) <= 12_510;
        Bench bench = measured().did(given(1, DAY, Document.Says.FIGURES, thousandths(first), thousandths(second)));
        assertEquals(inside ? VerdictKind.PASS : VerdictKind.FAIL, standing(bench, 1));
    }

    private static String thousandths(int figure) {
        return figure / 1000 + "." + "%03d".formatted(figure % 1000);
    }
}
