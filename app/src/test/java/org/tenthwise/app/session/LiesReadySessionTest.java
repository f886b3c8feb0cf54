package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Measured;

/** What a gauge was set on before is asked about, and set by one answer; no figure is that answer. */
class LiesReadySessionTest {

    private static final int BORE = 13;

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunSession before;
    private RunSession here;

    @BeforeEach
    void aPartWasMade() {
        before = workshop.atTheBore("013", "0.012");
        here = workshop.setUp("014");
        here.goTo(BORE);
    }

    private static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }

    @Test
    void oneAnswerSetsRingAndZero() throws Exception {
        assertEquals(
                new Prompt.LiesReady(
                        GaugeKind.Reference.MASTER, "30.000", mm("30.000"), Optional.of("013"), Optional.of(mm("0"))),
                here.state().asked());
        assertEquals(Optional.empty(), here.gauge().setAsBefore().objection());
        Setting setting = here.state().setting().orElseThrow();
        assertEquals(Optional.of(mm("30.000")), setting.certified());
        assertEquals(Optional.of(mm("0")), setting.zero());
        here.readingsFirst(true);
        here.enter("0.011");
        assertEquals(
                List.of(mm("30.011").length()),
                here.state().line().finding().measured().stream()
                        .map(Measured::value)
                        .toList());
    }

    /** The size of a bore is within a hundredth of that of its ring. */
    @Test
    void noFigureIsTakenForTheSizeOfARing() throws Exception {
        for (String figure : List.of("30.011", "0.011", "")) {
            assertEquals(
                    Objection.Kind.NOT_ASKED_HERE,
                    here.enter(figure).objection().orElseThrow().kind());
        }
        assertTrue(here.state().asked().asLyingReady().isPresent());
        assertEquals(Optional.empty(), here.state().setting());
    }

    @Test
    void aDialThatStandsElsewhereIsTypedOnTheSameRing() throws Exception {
        here.gauge().setOtherwise(true);
        assertEquals(new Prompt.Zero(mm("30.000"), mm("0")), here.state().asked());
        here.enter("0.03");
        assertEquals(
                Optional.of(mm("0.03")), here.state().setting().orElseThrow().zero());
    }

    @Test
    void anotherSizeIsTypedAndThenLiesReady() throws Exception {
        here.gauge().setOtherwise(false);
        assertEquals(
                new Prompt.Certified(GaugeKind.Reference.MASTER, "30.000", mm("30.000"), Optional.of(mm("30.000"))),
                here.state().asked());
        here.enter("30.002");
        here.enter("0");
        RunSession next = workshop.setUp("015");
        next.goTo(BORE);
        assertEquals(
                Optional.of(mm("30.002")), next.state().asked().asLyingReady().map(Prompt.LiesReady::certified));
    }

    /** Whoever sets a gauge anew does not trust how it stands. */
    @Test
    void aGaugeThatIsSetAnewIsNotSetByOneAnswer() throws Exception {
        here.gauge().setAsBefore();
        here.gauge().setAnew(false);
        assertInstanceOf(Prompt.Certified.class, here.state().asked());
    }

    @Test
    void aSenseThatIsNotKnownIsAskedFirstAndTheSizesOneByOne() throws Exception {
        before.gauge().strikeOut(before.state().settingsHere().get(0), SettingFault.SENSE, "Goes the other way");
        RunSession next = workshop.setUp("015");
        next.goTo(BORE);
        assertInstanceOf(Prompt.WhichSense.class, next.state().asked());
        next.gauge().tellSense(true);
        assertInstanceOf(Prompt.Certified.class, next.state().asked());
    }

    @Test
    void aSizeThatWasStruckOutIsNotOffered() throws Exception {
        before.gauge().strikeOut(before.state().settingsHere().get(0), SettingFault.REFERENCE, "Ring of another size");
        RunSession next = workshop.setUp("015");
        next.goTo(BORE);
        assertEquals(
                new Prompt.Certified(GaugeKind.Reference.MASTER, "30.000", mm("30.000"), Optional.empty()),
                next.state().asked());
    }

    @Test
    void anotherRingOrAnotherGaugeHasNothingReady() throws Exception {
        here.gauge().choose("BG-2", Optional.of("RING-7"));
        assertInstanceOf(Prompt.Certified.class, here.state().asked());
        here.gauge().choose("BG-9");
        here.gauge().tellSense(false);
        assertEquals(Optional.empty(), ((Prompt.Certified) here.state().asked()).known());
    }

    @Test
    void nothingIsSetWhereNothingLiesReady() throws Exception {
        here.gauge().setAsBefore();
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                here.gauge().setAsBefore().objection().orElseThrow().kind());
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                here.gauge().setOtherwise(true).objection().orElseThrow().kind());
        assertEquals(1, here.state().settingsHere().size());
    }
}
