package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.TemperatureRange;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Message;

/** Where far off begins, on the bound and one last digit beyond it, and in which findings it is told. By hand. */
class FarOffTest {

    /**
     * In limits of 18.2 to 18.3; over the wire 1.443 the middle reads 18.25 + 3 · 1.443 − 0.86603 · 2.5 = 20.414, and a
     * lead of 2.5° adds less than 0.01.
     */
    private static final OverWiresCheck THREAD = new OverWiresCheck(
            new ScrewThread(ThreadForm.METRIC, length("20"), length("2.5"), 1),
            Limits.between(mm("18.2"), mm("18.3")),
            Optional.empty(),
            Optional.empty(),
            places(1),
            1,
            Combine.EACH,
            true,
            mm("0"),
            new Check.Means(GaugeKind.MICROMETER_OVER_WIRES, Optional.empty(), Optional.of(mm("1.443"))));

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # a quarter of 20.414 to 20.424 is 5.104 to 5.106: 25.518 to 25.530 above and 15.310 to 15.318 below
        25.517, true
        25.531, false
        15.319, true
        15.309, false
        """)
    void aReadingOverWiresIsLookedForWhereTheseWiresPutIt(String over, boolean plausible) {
        Expected expected = Plausible.reading(null, THREAD, Optional.of(Bench.wires("1.443")), List.of())
                .orElseThrow();
        assertEquals(plausible, expected.fits(length(over)));
    }

    @ParameterizedTest
    @CsvSource({"25.000, true", "25.001, false", "15.000, true", "14.999, false"})
    void withoutWiresItIsLookedForAQuarterAroundTheCrest(String over, boolean plausible) {
        assertEquals(
                plausible,
                Plausible.reading(null, THREAD, Optional.empty(), List.of())
                        .orElseThrow()
                        .fits(length(over)));
    }

    @Test
    void whatIsOnlyAskedExpectsNoFigure() {
        assertEquals(
                Optional.empty(),
                Plausible.reading(null, new AskedCheck.Confirm("gripped"), Optional.empty(), List.of()));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # bore 30.000 to 30.021; a hundredth of the master the plan wants is 0.300, and the size read is 30.010
        # throughout
        30.300, -0.290, 0,      false
        30.301, -0.291, 0,      true
        29.700,  0.310, 0,      false
        29.699,  0.311, 0,      true
        # the master reads zero or its size, each within 1 mm
        30.000,  1.010, 1.000,  false
        30.000,  1.011, 1.001,  true
        30.000, -0.990, -1.000, false
        30.000, -0.991, -1.001, true
        30.000, 31.010, 31.000, false
        30.000, 31.011, 31.001, true
        30.000, 29.010, 29.000, false
        30.000, 29.009, 28.999, true
        """)
    void nothingIsAdvisedFromAGaugeWhoseSettingIsFarOff(String certified, String read, String zero, boolean farOff) {
        SizeFinding finding = (SizeFinding) new Bench()
                .step(bore(Optional.of(mm("30.000"))))
                .did(new StepEvent.GaugeSet(1, onMaster(certified, zero)))
                .read(1, read)
                .finding(1);
        assertEquals(length("30.010"), finding.value().orElseThrow());
        assertEquals(farOff ? finding.measured() : List.of(), finding.farOff());
        assertEquals(farOff, Plausible.spoils(finding));
    }

    @Test
    void aPlanThatNamesNoMasterTakesAny() {
        Finding finding = new Bench()
                .step(bore(Optional.empty()))
                .did(new StepEvent.GaugeSet(1, onMaster("29.100", "0")))
                .read(1, "0.910")
                .finding(1);
        assertEquals(List.of(), finding.farOff());
    }

    @Test
    void wiresOfAnotherSizeThanThePlansAreAChoice() {
        // over 1.500 the middle reads 18.25 + 4.500 − 2.165 = 20.585
        Finding finding = new Bench()
                .step(THREAD)
                .did(new StepEvent.GaugeSet(1, Bench.wires("1.500")))
                .read(1, "20.585")
                .finding(1);
        assertEquals(List.of(), finding.farOff());
    }

    @ParameterizedTest
    @CsvSource({"0, true", "0.001, false"})
    void nothingCutHasASizeOfZeroHoweverWideItsLimits(String read, boolean farOff) {
        // 0.1 to 3.0 has its middle at 1.55 and reaches 2.9 either way, so beyond zero
        Finding finding = new Bench()
                .step(Bench.size(Feature.DEPTH, "0.1", "3.0", Combine.EACH, 1))
                .read(1, read)
                .finding(1);
        assertEquals(farOff, Plausible.spoils(finding));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # a hundred times 0.02 is 2
        2.000,  true
        2.001,  false
        -2.000, true
        -2.001, false
        0,      true
        """)
    void anIndicatorThatMovedMoreThanAHundredTimesTheLimitIsTold(String read, boolean plausible) {
        RunOutFinding finding = (RunOutFinding) new Bench()
                .step(Bench.runOut("0.02", 4, "0", "90", "180", "270"))
                .read(1, "0", read)
                .finding(1);
        assertEquals(plausible ? List.of() : List.of(finding.measured().get(1)), finding.farOff());
    }

    @Test
    void aReadingOverWiresWithoutItsPointIsTold() {
        OverWiresFinding finding = (OverWiresFinding) new Bench()
                .step(THREAD)
                .did(new StepEvent.GaugeSet(1, Bench.wires("1.443")))
                .read(1, "20414")
                .finding(1);
        assertEquals(finding.measured(), finding.farOff());
        assertEquals(1, finding.measured().size());
    }

    @Test
    void anAnswerIsNeverFarOff() {
        Finding finding = new Bench()
                .step(new AskedCheck.Confirm("gripped"))
                .did(new StepEvent.Answered(1, Question.CONFIRMED, Answer.YES))
                .finding(1);
        assertEquals(List.of(), finding.farOff());
        assertFalse(Plausible.spoils(finding));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # shop from, read,   plausible: ten degrees below the shop, never below zero, and not above 60
        18,          8.00,   true
        18,          7.99,   false
        18,          60.00,  true
        18,          60.01,  false
        5,           0.00,   true
        5,          -0.01,   false
        # hundredths at the most
        18,          20.01,  true
        18,          20.010, false
        """)
    void aTemperatureIsOneOfThatShopAndOfAThermometer(String least, String read, boolean plausible) {
        ThermalData climate = new ThermalData(
                growth(),
                growth(),
                new TemperatureRange(Celsius.of(least), Celsius.of("35")),
                TemperatureScale.CELSIUS);
        assertEquals(plausible, Plausible.temperature(climate, Degrees.of(read, CELSIUS)));
    }

    @ParameterizedTest
    @CsvSource({"270, 20, 270", "20, 270, 270", "20, 20.5, "})
    void aTemperatureThatIsFarOffIsToldWhetherOfThePartOrOfTheGauge(String part, String gauge, String told) {
        ThermalData climate = new ThermalData(
                growth(), growth(), new TemperatureRange(Celsius.of("18"), Celsius.of("35")), TemperatureScale.CELSIUS);
        Finding finding = new Bench()
                .in(climate)
                .step(Bench.size(Feature.DIAMETER, "39.984", "40.000", Combine.EACH, 1))
                .at(1, part, gauge)
                .read(1, "39.992")
                .finding(1);
        assertEquals(
                Optional.ofNullable(told).map(figure -> Degrees.of(figure, CELSIUS)).stream()
                        .toList(),
                Plausible.farOffTemperatures(finding));
        assertEquals(told != null, Plausible.spoils(finding));
        assertTrue(finding.farOff().isEmpty(), "the reading itself is not");
    }

    private static SizeCheck bore(Optional<Written> master) {
        return new SizeCheck(
                Feature.BORE,
                Limits.between(mm("30.000"), mm("30.021")),
                places(1),
                1,
                Combine.EACH,
                true,
                mm("0"),
                new Check.Means(GaugeKind.BORE_GAUGE, Optional.empty(), master));
    }

    private static Setting onMaster(String certified, String zero) {
        return Setting.onMaster(
                new Gauge("BG-1", GaugeKind.BORE_GAUGE, Optional.of(ReadingDirection.RISES_WITH_SIZE)),
                "M",
                mm(certified),
                mm(zero));
    }

    private static ThermalData.Growth growth() {
        return new ThermalData.Growth(Expansion.of("16.2"), Message.of("as-said", "by hand"));
    }
}
