package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/** To which figures of which checks something is offered, and what. */
class OffersTest extends RunAtHand {

    private static final String STEP =
            """
            [[step]]
            number = 1
            operation = 10
            name = "Size"
            method = "As it says."
            """;

    private static final String PLACES = "places = [\"front\", \"middle\", \"back\"]\n";
    private static final String MICROMETER = PLACES + "gauge_kind = \"micrometer\"\ngauge = \"MC-1\"\n";

    private RunViewModel of(String step) throws Exception {
        beginARunOf(InventedPlans.inMillimetres(STEP + step));
        return atOnce();
    }

    private RunViewModel atARunOut() throws Exception {
        for (int confirm : List.of(1, 2, 3)) {
            run.session.goTo(confirm);
            run.session.answer(Answer.YES);
        }
        run.session.goTo(ARun.RUN_OUT);
        return atOnce();
    }

    private static void assertShown(String figure, RunViewModel model, String keys) {
        Finger.presses(model, keys);
        assertEquals(figure, model.figureProperty().get());
    }

    @Test
    void aRunOutBeginsBehindZeroAndItsPointFromTheFirst() throws Exception {
        RunViewModel model = atARunOut();
        assertShown("0.", model, "");
        assertShown("0.004", model, "004");
        Finger.presses(model, "\n");
        assertShown("-0.", model, "-");
        assertShown("-0.001", model, "001");
        Finger.presses(model, "\n");
        assertEquals(List.of("0.004", "-0.001"), readings());
    }

    /** 0011 would be a tenth of 0.011, and inside. */
    @ParameterizedTest
    @CsvSource({"0011", "11", "01", "1", "0"})
    void aRunOutTypedByHabitIsNotATenthOfIt(String keys) throws Exception {
        RunViewModel model = atARunOut();
        Finger.presses(model, keys + "\n");
        assertEquals(List.of(), readings());
        assertEquals(
                "3 decimals here. Any other figure: type it whole, with its point.",
                model.promptProperty().get());
        Finger.presses(model, "0.011\n");
        assertEquals(List.of("0.011"), readings());
    }

    @Test
    void aFigureOnADialThatIsClearedIsTypedAnewBehindItsPoint() throws Exception {
        RunViewModel model = atARunOut();
        Finger.presses(model, "C");
        assertShown("0.", model, "");
        Finger.presses(model, "-8C");
        assertShown("0.", model, "");
        Finger.presses(model, "011\n");
        assertEquals(List.of("0.011"), readings());
    }

    @Test
    void aDialThatHasGoneRoundIsTypedWhole() throws Exception {
        RunViewModel model = atARunOut();
        assertShown("1.004", model, "1.004");
        Finger.presses(model, "\n");
        assertEquals(List.of("1.004"), readings());
        assertShown("", model, "");
        assertShown("0004", model, "0004");
    }

    @Test
    void aBoreGaugeOnItsMasterDoesAndItsMasterAndItsZeroDoNot() throws Exception {
        run.setUpAndGoTo(ARun.BORE);
        run.session.gauge().tellSense(false);
        RunViewModel model = atOnce();
        assertShown("30000", model, "30000");
        Finger.presses(model, "<<<.000\n");
        assertShown("000", model, "000");
        Finger.presses(model, "C0.000\n");
        run.session.gauge().confirmSense(true);
        model.refresh();
        Finger.presses(model, "228\n205\n");
        assertShown("0.", model, "");
        Finger.presses(model, "-143\n");
        assertShown("0.", model, "");
        Finger.presses(model, "015\n");
        assertEquals(List.of("-0.143", "0.015"), readings());
    }

    /** In a shop of 18 to 23 °C, so that 13 to 28 are whole degrees. */
    @ParameterizedTest
    @CsvSource({
        "228, 22.8",
        "22.8, 22.8",
        "23, 23",
        "130, 13.0",
        "289, 28.9",
        // as cold and as warm as that a part seldom is, and three digits may be three
        "129, 129",
        "290, 290",
        "104, 104"
    })
    void thePointOfATemperatureComesBehindDegreesNearThoseOfTheShop(String keys, String figure) throws Exception {
        assertShown(figure, atItsTemperature(), keys);
    }

    /** A thermometer shows one decimal; 2155 is no 21.55 that nobody could read. */
    @ParameterizedTest
    @CsvSource({"2155", "1155"})
    void aTemperatureOfMoreDecimalsIsTypedWithItsPoint(String keys) throws Exception {
        RunViewModel model = atItsTemperature();
        Finger.presses(model, keys + "\n");
        assertEquals(
                keys.startsWith("2") ? "21.55" : "1155", model.figureProperty().get());
        assertTrue(run.session.state().asked().asksTemperature());
    }

    private RunViewModel atItsTemperature() throws Exception {
        run.setUpAndGoTo(ARun.BORE);
        run.session.gauge().tellSense(false);
        run.enter("30.000", "0.000");
        run.session.gauge().confirmSense(true);
        return atOnce();
    }

    /** Its dial stands near 30 then, as a gauge that reads the size itself. */
    @Test
    void aBoreGaugeSetToShowTheSizeIsTypedInFullAtFirst() throws Exception {
        run.setUpAndGoTo(ARun.BORE);
        run.session.gauge().tellSense(false);
        run.enter("30.000", "30.000");
        run.session.gauge().confirmSense(true);
        run.enter("20", "20");
        RunViewModel model = atOnce();
        assertShown("30013", model, "30013");
        Finger.presses(model, "C30.013\n");
        assertShown("30.", model, "");
    }

    /** The limits are those of the pitch diameter. */
    @Test
    void overWiresTheFirstIsTypedWithItsPoint() throws Exception {
        beginARunOf(InventedPlans.ROOT_THEN_WIRES);
        run.enter("16.900");
        run.session.goTo(2);
        run.enter("1.443");
        RunViewModel model = atOnce();
        assertShown("21234", model, "21234");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            # one limit says nothing of where a size lies
            lower = 47.95                                          | 47991 | 47991
            upper = 48.00                                          | 47991 | 47991
            # so do the limits of a range
            upper = 0.020\\ncombine = "range"\\ndrawing_says = "SR"                      | 47991 | 47991
            lower = 0.000\\nupper = 0.020\\ncombine = "range"\\ndrawing_says = "SR"      | 0991  | 0991
            lower = 47.95\\nupper = 48.05                          | 47991 | 47.991
            # the one is the beginning of the other
            lower = 1.50\\nupper = 10.50                           | 1500  | 1500
            """)
    void whereTheLimitsSayNothingOfAReadingThePointIsTyped(String limits, String keys, String shown) throws Exception {
        RunViewModel model = of("kind = \"diameter\"\n" + limits.replace("\\n", "\n") + "\n" + MICROMETER);
        assertShown(shown, model, keys);
    }

    @Test
    void theReadingBeforeIsOfferedOfAnySizeThatAGaugeReadsItself() throws Exception {
        RunViewModel model =
                of("kind = \"diameter\"\nupper = 0.020\ncombine = \"range\"\ndrawing_says = \"SR\"\n" + MICROMETER);
        Finger.presses(model, "47.991\n990\n989\n");
        assertEquals(List.of("47.991", "47.990", "47.989"), readings());
    }

    @Test
    void aReadingWithoutDecimalsIsOfferedToNone() throws Exception {
        RunViewModel model = of("kind = \"diameter\"\nlower = 47.9\nupper = 48.1\n" + MICROMETER);
        Finger.presses(model, "48\n");
        assertEquals(List.of("48"), readings());
        assertShown("", model, "");
        assertShown("48.0", model, "480");
    }

    /** A rod on the point of the drill reads deeper than the hole. */
    @Test
    void aDepthReadOnThePointOfTheDrillIsTypedWithItsPoint() throws Exception {
        RunViewModel model =
                of("kind = \"depth\"\nlower = 103.5\nupper = 104.5\ndrill = { diameter = 8, point_angle = 118 }\n"
                        + "read_to = \"point\"\n"
                        + PLACES
                        + "gauge_kind = \"depth-gauge\"\ngauge = \"DG-1\"\n");
        assertShown("1040", model, "1040");
    }

    @Test
    void anInchIsOfferedAsAMillimetreIs() throws Exception {
        beginARunOf(
                InventedPlans.inInches(STEP + "kind = \"diameter\"\nlower = 0.9990\nupper = 1.0010\n" + MICROMETER));
        RunViewModel model = atOnce();
        assertShown("0.9998", model, "09998");
        Finger.presses(model, "\n9997\n0002\n");
        assertEquals(List.of("0.9998", "0.9997"), readings());
        assertEquals(
                "Far from 0.9997. Type it whole, with its point.",
                model.promptProperty().get());
        Finger.presses(model, "1.0002\n");
        assertEquals(List.of("0.9998", "0.9997", "1.0002"), readings());
    }

    @Test
    void anAngleIsTypedInFull() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(AngleScreenTest.LENGTH_THEN_ANGLE));
        run.enter("30.02");
        run.session.goTo(2);
        RunViewModel model = atOnce();
        assertShown("3015", model, "3015");
        Finger.presses(model, "C30-15\n");
        assertEquals(List.of("30°15′"), readings());
        assertShown("", model, "");
    }

    @Test
    void afterACutTheFirstIsTypedInFull() throws Exception {
        RunViewModel model =
                of("kind = \"diameter\"\nlower = 47.98\nupper = 48.00\ncut_again = \"too big\"\n" + MICROMETER);
        Finger.presses(model, "48.20\n21\n20\n");
        run.session.again(Why.CUT);
        model.refresh();
        assertShown("", model, "");
        assertShown("47.99", model, "4799");
    }

    /** A figure begun before it is known what is asked next goes without; the next one is offered what stands then. */
    @Test
    void behindAFigureOnItsWayNothingIsOffered() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        Queue<Runnable> work = new ArrayDeque<>();
        RunViewModel model = model(work::add);
        Finger.presses(model, "47991\n");
        assertShown("", model, "");
        assertShown("479", model, "479");
        work.remove().run();
        assertShown("4799", model, "9");
        assertShown("47.", model, "<<<<");
    }
}
