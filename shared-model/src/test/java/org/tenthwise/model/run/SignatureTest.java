package org.tenthwise.model.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

class SignatureTest {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-25T07:31:00+01:00");

    private final List<Entry> entries = new ArrayList<>();

    SignatureTest() {
        did(new Event.Begun(new PartId("X-1", "A"), "1", "", "", new PlanSource("", "")));
    }

    private SignatureTest did(Event event) {
        entries.add(new Entry(entries.size() + 1, "r", AT, "Setter 1", event));
        return this;
    }

    private SignatureTest signed(String by, SignedAs meaning) {
        return did(new Event.Signed(by, meaning));
    }

    private SignatureTest changed() {
        return did(reading());
    }

    private static Event reading() {
        return new StepEvent.ReadingTaken(1, "1.1", new Written("30.010", Unit.MILLIMETRE));
    }

    private List<Signature> signatures() {
        return new Run(entries).signatures();
    }

    private List<Optional<Signature.Lapse>> lapses() {
        return signatures().stream().map(Signature::lapse).toList();
    }

    private long against() {
        return signatures().stream()
                .filter(signature -> signature.standsAgainst(signatures()))
                .count();
    }

    @Test
    void closingIsOneOfThemAndMoreMayFollow() {
        did(new Event.Closed("Setter 1", SignedAs.MACHINED_AND_MEASURED)).signed("Inspector 1", SignedAs.ACCEPTED);
        assertEquals(
                List.of(true, false),
                signatures().stream().map(Signature::closed).toList());
        assertEquals(
                List.of(SignedAs.MACHINED_AND_MEASURED, SignedAs.ACCEPTED),
                signatures().stream().map(Signature::meaning).toList());
        assertEquals(List.of(Optional.empty(), Optional.empty()), lapses());
    }

    static List<Event> whatChangesAFinding() {
        return List.of(
                reading(),
                new StepEvent.TemperatureTaken(1, MeasuredBody.PART, Degrees.of("21", CELSIUS)),
                new StepEvent.Answered(1, Question.CONFIRMED, Answer.YES),
                new Event.StruckOut(2, "slipped"),
                new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT),
                new StepEvent.DispositionSigned(1, Disposition.USE_AS_IS, "will do", "Design office"));
    }

    @ParameterizedTest
    @MethodSource("whatChangesAFinding")
    void aSignatureLapsesWithAnythingThatChangesAFinding(Event later) {
        signed("Inspector 1", SignedAs.ACCEPTED).did(later);
        assertEquals(List.of(Optional.of(Signature.Lapse.CHANGED)), lapses());
    }

    static List<Event> whatChangesNone() {
        return List.of(
                new StepEvent.NoteMade(0, "put away"),
                new Event.HandedOver("Setter 2"),
                new StepEvent.DoubtFlagged(1, "chatter"),
                new Event.TakenOver(),
                new Event.Sealed(3, "0f", "a1", "key", "signature"),
                new Event.Signed("Setter 2", SignedAs.MEASURED_AGAIN),
                new Event.Closed("Setter 1", SignedAs.MACHINED_AND_MEASURED));
    }

    @ParameterizedTest
    @MethodSource("whatChangesNone")
    void aSignatureStaysWithAnythingElse(Event later) {
        signed("Inspector 1", SignedAs.ACCEPTED).did(later);
        assertTrue(signatures().get(0).lapse().isEmpty());
    }

    @Test
    void aRefusalIsNotOvercomeByAChangeAlone() {
        signed("Inspector 1", SignedAs.NOT_ACCEPTED).changed();
        assertEquals(1, against());
        signed("Inspector 2", SignedAs.ACCEPTED);
        assertEquals(0, against());
    }

    @Test
    void aRefusalIsNotOvercomeByAnotherPersonWhereNothingChanged() {
        signed("Inspector 1", SignedAs.NOT_ACCEPTED).signed("Inspector 2", SignedAs.ACCEPTED);
        assertEquals(1, against());
    }

    @Test
    void whoRefusedCanTakeItBackAndWhoAcceptedToo() {
        signed("Inspector 1", SignedAs.NOT_ACCEPTED).signed("inspector  1", SignedAs.ACCEPTED);
        assertEquals(0, against());
        assertEquals(List.of(Optional.of(Signature.Lapse.SIGNED_ANEW), Optional.empty()), lapses());
        signed("Inspector 1", SignedAs.NOT_ACCEPTED);
        assertEquals(1, against());
        assertTrue(signatures().get(1).lapsed());
    }

    @Test
    void whoMadeOrMeasuredItSaysNeitherYesNorNoAndTakesNothingBack() {
        signed("Setter 1", SignedAs.MACHINED_AND_MEASURED)
                .signed("Setter 1", SignedAs.ACCEPTED)
                .signed("Setter 1", SignedAs.MEASURED_AGAIN);
        assertEquals(List.of(Optional.empty(), Optional.empty(), Optional.empty()), lapses());
    }

    @Test
    void anAcceptanceThatLapsedItselfOvercomesNoRefusal() {
        signed("Inspector 1", SignedAs.NOT_ACCEPTED)
                .changed()
                .signed("Inspector 2", SignedAs.ACCEPTED)
                .changed();
        assertEquals(1, against());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # words of a run,              meaning
        made and measured,             MACHINED_AND_MEASURED
        released,                      ACCEPTED
        machined and measured,         MACHINED_AND_MEASURED
        measured again,                MEASURED_AGAIN
        accepted,                      ACCEPTED
        not accepted,                  NOT_ACCEPTED
        not released,                  OTHER
        rejected,                      OTHER
        measured,                      OTHER
        RELEASED,                      OTHER
        released for measuring only,   OTHER
        other,                         OTHER
        """)
    void wordsOfOlderRunsAreTakenForConsentOnlyWhereTheyAreKnown(String words, SignedAs meaning) {
        assertEquals(meaning, new Event.Closed("Inspector 1", words).as());
    }

    @Test
    void wordsThatNobodyKnowsSpeakAgainst() {
        did(new Event.Closed("Inspector 1", "measured"));
        assertEquals(1, against());
        assertEquals("measured", signatures().get(0).words());
    }

    @Test
    void anUnknownMeaningCannotBeSignedAnew() {
        assertThrows(IllegalArgumentException.class, () -> new Event.Signed("Inspector 1", SignedAs.OTHER));
    }

    @Test
    void namesThatDifferInCapitalsAndBlanksAreOnePerson() {
        assertTrue(Person.isSame(" Setter 1", "SETTER1 "));
        assertTrue(Person.isSame("Setter\u00a01", "setter 1"));
        assertFalse(Person.isSame("Setter 1", "Setter 2"));
    }

    @Test
    void whoTookAReadingIsKnown() {
        changed();
        assertTrue(new Run(entries).wasReadBy("setter 1"));
        assertFalse(new Run(entries).wasReadBy("Setter 2"));
    }
}
