package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.compute.roundness.Move;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.TemperatureRange;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Message;

/** What is far off, and that nothing is advised from it. Figures are reckoned by hand from the limits beside them. */
class PlausibleTest {

    private static final SizeCheck JOURNAL = Bench.size(Feature.DIAMETER, "39.984", "40.000", Combine.EACH, 2);
    private static final SizeCheck BORE = new SizeCheck(
            Feature.BORE,
            Limits.between(mm("30.000"), mm("30.021")),
            Bench.places(2),
            1,
            Combine.EACH,
            true,
            mm("0"),
            new Check.Means(GaugeKind.BORE_GAUGE, Optional.of("BG-1"), Optional.of(mm("30.000"))));

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # journal 39.984 to 40.000; a quarter of 39.992 is 9.998
            39.991,  true
            49.990,  true
            49.991,  false
            1000000, false
            # the same in inches
            1.5745,  false
            39991,   false
            """)
    void aSizeIsFarOffFromAQuarterOfItsNominalOn(String read, boolean plausible) {
        assertEquals(plausible, expected(JOURNAL).fits(length(read)));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # depth 0.4 to 0.6: inches of it are 0.02, and half of 0.5 is 0.25
            0.40, true
            0.74, true
            0.02, false
            """)
    void aSmallSizeInInchesIsFarOffToo(String read, boolean plausible) {
        assertEquals(
                plausible,
                expected(Bench.size(Feature.DEPTH, "0.4", "0.6", Combine.EACH, 1))
                        .fits(length(read)));
    }

    @Test
    void noSizeWithinItsLimitsIsFarOffHoweverWideTheyAre() {
        Expected wide = expected(Bench.size(Feature.DEPTH, "0.1", "3.0", Combine.EACH, 1));
        assertTrue(wide.fits(length("0.1")));
        assertTrue(wide.fits(length("3.0")));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # middle 30.0105 on a master of 30.000 that reads 0.030: 0.0105 further on, or back where the number falls
            RISES_WITH_SIZE, 0.0405,  1.0405,  1.0406
            FALLS_WITH_SIZE, 0.0195, -0.9805, -0.9806
            """)
    void aComparingGaugeIsFarOffATurnFromWhereTheNominalPutsIt(
            ReadingDirection sense, String about, String last, String beyond) {
        Expected expected = Plausible.reading(null, BORE, Optional.of(set(sense, "30.000", "0.030")), List.of())
                .orElseThrow();
        assertEquals(length(about), expected.about());
        assertTrue(expected.fits(length(last)));
        assertFalse(expected.fits(length(beyond)));
    }

    @Test
    void aRangeSaysNothingOfItsFirstReadingAndAHundredTimesItsLimitOfTheRest() {
        SizeCheck floor = new SizeCheck(
                Feature.DEPTH,
                Limits.atMost(mm("0.05")),
                Bench.places(4),
                1,
                Combine.RANGE,
                false,
                mm("0"),
                Bench.with(GaugeKind.DEPTH_GAUGE));
        assertEquals(Optional.empty(), Plausible.reading(null, floor, Optional.empty(), List.of()));
        Expected next = Plausible.reading(null, floor, Optional.empty(), List.of(length("25.40")))
                .orElseThrow();
        assertTrue(next.fits(length("30.40")));
        assertFalse(next.fits(length("30.41")));
    }

    @ParameterizedTest
    @CsvSource({"0.999, true", "-1.001, false", "29.5, true", "28.99, false", "1000, false"})
    void aMasterReadsNearZeroOrNearItsSize(String zero, boolean plausible) {
        assertEquals(
                plausible, Plausible.zero(length("30.000")).stream().anyMatch(expected -> expected.fits(length(zero))));
    }

    @ParameterizedTest
    @CsvSource({"18, true", "60, true", "270, false", "72.5, false", "7.9, false", "-1, false", "20.013, false"})
    void aTemperatureIsOneThatAShopCanHave(String degrees, boolean plausible) {
        assertEquals(plausible, Plausible.temperature(shop(), Degrees.of(degrees, CELSIUS)));
    }

    @Test
    void noCutIsAdvisedFromAJournalReadWithoutItsPoint() {
        SizeFinding finding =
                (SizeFinding) new Bench().step(JOURNAL).read(1, "39991").finding(1);
        assertEquals(VerdictKind.UNPROVEN, finding.verdict().standing());
        assertEquals(Optional.empty(), finding.verdict().margin());
        assertEquals(Optional.empty(), finding.proposal());
        assertEquals(finding.measured(), finding.farOff());
    }

    @Test
    void noCutIsAdvisedFromASoundReadingBesideOneThatIsFarOff() {
        Finding sound = new Bench().step(JOURNAL).read(1, "40.100", "40.090").finding(1);
        assertTrue(sound.proposal().isPresent());
        Finding spoilt = new Bench().step(JOURNAL).read(1, "40.100", "400.90").finding(1);
        assertEquals(Optional.empty(), spoilt.proposal());
    }

    @Test
    void noCutIsAdvisedFromAJournalReadWithoutItsPointAtBothPlaces() {
        assertEquals(
                Optional.empty(),
                new Bench().step(JOURNAL).read(1, "39991", "39992").finding(1).proposal());
    }

    @Test
    void aMeanWithAFigureFarOffInItDoesNotPass() {
        SizeCheck mean = Bench.size(Feature.DIAMETER, "39.984", "40.000", Combine.MEAN, 2);
        // the mean of 20.000 and 59.984 is 39.992
        Finding finding = new Bench().step(mean).read(1, "20.000", "59.984").finding(1);
        assertEquals(VerdictKind.UNPROVEN, finding.verdict().standing());
    }

    @Test
    void whatIsPastSizeStaysSo() {
        Finding finding = new Bench().step(JOURNAL).read(1, "3.999").finding(1);
        assertEquals(VerdictKind.FAIL, finding.verdict().standing());
        assertTrue(Plausible.spoils(finding));
    }

    @ParameterizedTest
    @ValueSource(strings = {"29.000", "31.5"})
    void noCutIsAdvisedFromAGaugeSetOnAnotherMaster(String certified) {
        Bench bench = new Bench()
                .step(BORE)
                .did(new StepEvent.GaugeSet(1, set(ReadingDirection.RISES_WITH_SIZE, certified, "0")))
                .read(1, "-0.100", "-0.100");
        SizeFinding finding = (SizeFinding) bench.finding(1);
        assertEquals(Optional.empty(), finding.proposal());
        assertTrue(Plausible.spoils(finding));
    }

    @Test
    void aSizeOfLessThanNothingIsFarOff() {
        Bench bench = new Bench()
                .step(BORE)
                .did(new StepEvent.GaugeSet(1, set(ReadingDirection.FALLS_WITH_SIZE, "30.000", "0")))
                .read(1, "979999.979");
        SizeFinding finding = (SizeFinding) bench.finding(1);
        assertEquals(length("-979969.979"), finding.value().orElseThrow());
        assertTrue(Plausible.spoils(finding));
        assertEquals(Optional.empty(), finding.proposal());
    }

    @Test
    void aBoreBroughtToSizeByATemperatureThatIsFarOffDoesNotPass() {
        // 30.138/(1 + 16.2e-6·250) for a part at 270 °C is 30.0164
        SizeFinding finding = (SizeFinding) new Bench()
                .in(shop())
                .step(direct(BORE))
                .at(1, "270", "20")
                .read(1, "30.138", "30.138")
                .finding(1);
        assertEquals(
                "30.016",
                finding.value()
                        .orElseThrow()
                        .millimetres()
                        .setScale(3, RoundingMode.DOWN)
                        .toPlainString());
        assertEquals(VerdictKind.UNPROVEN, finding.verdict().standing());
        assertEquals(List.of(Degrees.of("270", CELSIUS)), Plausible.farOffTemperatures(finding));
    }

    @Test
    void noJawIsMovedByARunOutWithATurnOfTheDialMissed() {
        RunOutCheck check = Bench.runOut("0.02", 4, "0", "90", "180", "270");
        RunOutFinding sound = (RunOutFinding)
                new Bench().step(check).read(1, "0.00", "0.05", "0.10", "0.05").finding(1);
        assertEquals(
                List.of(new Move.Jaw(1, 3, length("0.05"))),
                sound.truingUp().orElseThrow().near());
        RunOutFinding spoilt = (RunOutFinding)
                new Bench().step(check).read(1, "0.00", "0.05", "2.10", "0.05").finding(1);
        assertEquals(Optional.empty(), spoilt.truingUp());
        assertEquals(Optional.empty(), spoilt.near().fit());
        assertEquals(VerdictKind.FAIL, spoilt.verdict().standing());
    }

    @Test
    void aRunOutDoesNotPassByTwoFiguresThatAreFarOffAlike() {
        Bench bench = new Bench()
                .step(Bench.runOut("0.02", 4, "0", "90", "180", "270"))
                .did(new StepEvent.ReadingTaken(1, RunOutCheck.HIGHEST, mm("29991")))
                .did(new StepEvent.ReadingTaken(1, RunOutCheck.LOWEST, mm("29991")));
        assertEquals(VerdictKind.UNPROVEN, bench.finding(1).verdict().standing());
        Bench points = new Bench()
                .step(Bench.runOut("0.02", 4, "0", "90", "180", "270"))
                .read(1, "29991", "29991", "29991", "29991");
        assertEquals(VerdictKind.UNPROVEN, points.finding(1).verdict().standing());
    }

    private static Expected expected(Check check) {
        return Plausible.reading(null, check, Optional.empty(), List.of()).orElseThrow();
    }

    private static SizeCheck direct(SizeCheck size) {
        return new SizeCheck(
                size.feature(),
                size.limits(),
                size.places(),
                1,
                size.combine(),
                true,
                mm("0"),
                Bench.with(GaugeKind.INSIDE_MICROMETER));
    }

    private static Setting set(ReadingDirection sense, String certified, String zero) {
        return Setting.onMaster(
                new Gauge("BG-1", GaugeKind.BORE_GAUGE, Optional.of(sense)), "M", mm(certified), mm(zero));
    }

    private static ThermalData shop() {
        return new ThermalData(
                growth("16.2"),
                growth("11.5"),
                new TemperatureRange(Celsius.of("18"), Celsius.of("35")),
                TemperatureScale.CELSIUS);
    }

    private static ThermalData.Growth growth(String millionths) {
        return new ThermalData.Growth(Expansion.of(millionths), Message.of("as-said", "by hand"));
    }
}
