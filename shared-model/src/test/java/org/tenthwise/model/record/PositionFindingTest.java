package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.size;
import static org.tenthwise.model.record.Bench.with;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.PositionReading;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.TruePlace;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.FeatureOfSize;
import org.tenthwise.model.tolerance.MaterialModifier;
import org.tenthwise.model.verdict.VerdictKind;

/** Holes in a plate, all figures by hand: a zone of 0.1 about X 20 and Y 15, a bore of 10.00 to 10.10. */
class PositionFindingTest {

    private static final TruePlace ALONE = new TruePlace(Optional.empty(), mm("20"), mm("15"));
    private static final SizeCheck BORE = size(Feature.BORE, "10.00", "10.10", Combine.EACH, 2);

    private static PositionCheck position(
            MaterialModifier modifier, FeatureOfSize feature, List<TruePlace> holes, String... ends) {
        return new PositionCheck(
                mm("0.1"),
                modifier,
                feature,
                modifier == MaterialModifier.NONE ? Optional.empty() : Optional.of(1),
                PositionReading.X_AND_Y,
                holes,
                List.of(ends),
                with(GaugeKind.CALIPER),
                Optional.empty());
    }

    private static PositionFinding alone(String... readings) {
        return (PositionFinding) new Bench()
                .step(position(MaterialModifier.NONE, FeatureOfSize.HOLE, List.of(ALONE)))
                .read(1, readings)
                .finding(1);
    }

    private static Bench sized(SizeCheck size, MaterialModifier modifier, FeatureOfSize feature) {
        return new Bench().step(size).step(position(modifier, feature, List.of(ALONE)));
    }

    /** By hand: twice the root of 0.03² + 0.04² is 0.1, and 0.1 is on the zone. */
    @ParameterizedTest
    @CsvSource({
        "20.03,  15.04,   PASS",
        "19.97,  14.96,   PASS",
        "20.03,  15.0401, FAIL",
        "20.05,  15,      PASS",
        "20.051, 15,      FAIL"
    })
    void twiceTheDistanceIsHeldAgainstTheZone(String x, String y, VerdictKind standing) {
        assertEquals(standing, alone(x, y).verdict().standing());
        assertEquals(Optional.empty(), alone(x, y).allowed());
    }

    /**
     * By hand: 2 × 0.0145 is 0.029 to the last of the four places read; twice the root of 0.014² + 0.003² has no end.
     */
    @ParameterizedTest
    @CsvSource({"20.0145, 15.0000, 4", "20.03, 15.04, 2", "20.014, 15.000, 3", "20.014, 15.003, 4"})
    void onlyARootWithoutAnEndHasAPlaceMoreThanTheReadings(String x, String y, int places) {
        PositionFinding found = alone(x, y);
        assertEquals(places, Decimals.of(found, found.step().limits().orElseThrow()));
    }

    @Test
    void halfReadItIsOpen() {
        PositionFinding found = alone("20.03");
        assertEquals(VerdictKind.OPEN, found.verdict().standing());
        assertEquals(1, found.missing());
        assertEquals(Optional.empty(), found.value());
    }

    @Test
    void theFurtherEndDecidesAndBothMustBeRead() {
        PositionCheck check = position(MaterialModifier.NONE, FeatureOfSize.HOLE, List.of(ALONE), "entry", "exit");
        assertEquals(
                List.of("entry, X", "entry, Y", "exit, X", "exit, Y"),
                check.slots().stream().map(slot -> slot.place().name()).toList());
        Bench bench = new Bench().step(check).read(1, "20", "15");
        assertEquals(VerdictKind.OPEN, bench.finding(1).verdict().standing());
        PositionFinding leans =
                (PositionFinding) bench.read(1, "20", "15", "20", "15.06").finding(1);
        assertEquals(VerdictKind.FAIL, leans.verdict().standing());
        assertEquals(length("0.12"), leans.value().orElseThrow());
        assertEquals(
                List.of("exit"), leans.decidingPoint().orElseThrow().point().called());
    }

    /** One hole that is out settles it, whatever is still to be read. */
    @Test
    void ofSeveralHolesTheFurthestOutDecides() {
        List<TruePlace> holes = List.of(
                new TruePlace(Optional.of("A"), mm("20"), mm("15")),
                new TruePlace(Optional.of("B"), mm("-20"), mm("0")));
        Bench bench = new Bench()
                .step(position(MaterialModifier.NONE, FeatureOfSize.HOLE, holes))
                .read(1, "20.06", "15");
        PositionFinding found = (PositionFinding) bench.finding(1);
        assertEquals(VerdictKind.FAIL, found.verdict().standing());
        assertEquals(2, found.missing());
        PositionFinding all =
                (PositionFinding) bench.read(1, "20", "15", "-20.01", "0").finding(1);
        assertEquals(VerdictKind.PASS, all.verdict().standing());
        assertEquals(length("0.02"), all.value().orElseThrow());
        assertEquals(List.of("B"), all.decidingPoint().orElseThrow().point().called());
    }

    /** The bonus counts from the smallest size read: 10.03 less 10.00, or 10.10 less the largest, 10.05. */
    @ParameterizedTest
    @CsvSource({"MMC, 0.03, PASS", "LMC, 0.05, PASS"})
    void theSizeOfABoreAddsToItsZone(MaterialModifier modifier, String bonus, VerdictKind standing) {
        PositionFinding found = (PositionFinding) sized(BORE, modifier, FeatureOfSize.HOLE)
                .read(1, "10.03", "10.05")
                .read(2, "20.065", "15")
                .finding(2);
        assertEquals(length(bonus), found.decidingPoint().orElseThrow().bonus());
        assertEquals(Optional.of(length("0.1").plus(length(bonus))), found.allowed());
        assertEquals(standing, found.verdict().standing());
        assertFalse(found.isOfOneSize());
    }

    /** 10.00 less the largest size of the pin, 9.96. */
    @Test
    void ofAPinTheLargestSizeCounts() {
        PositionFinding found = (PositionFinding) sized(
                        size(Feature.DIAMETER, "9.90", "10.00", Combine.EACH, 2),
                        MaterialModifier.MMC,
                        FeatureOfSize.SHAFT)
                .read(1, "9.92", "9.96")
                .read(2, "20.0701", "15")
                .finding(2);
        assertEquals(length("0.04"), found.decidingPoint().orElseThrow().bonus());
        assertEquals(VerdictKind.FAIL, found.verdict().standing());
    }

    @Test
    void untilTheSizeIsKnownForGoodItIsOpen() {
        Bench bench =
                sized(size(Feature.BORE, "10.00", "10.10", Combine.EACH, 2), MaterialModifier.MMC, FeatureOfSize.HOLE);
        PositionFinding unread = (PositionFinding) bench.read(2, "20", "15").finding(2);
        assertEquals(VerdictKind.OPEN, unread.verdict().standing());
        assertTrue(unread.awaitsAnother());
        assertEquals(
                VerdictKind.OPEN,
                bench.read(1, "10.03").read(2, "20", "15").finding(2).verdict().standing());
    }

    /** A bore still too small can be cut again, and then it is larger; 25.4 times too large is far off. */
    @ParameterizedTest
    @CsvSource({"9.95, OPEN", "0.395, OPEN", "10.12, FAIL", "10.00, PASS"})
    void aSizeThatCanStillChangeAddsNothingAndOneThatIsOutFailsIt(String bore, VerdictKind standing) {
        PositionFinding found = (PositionFinding) sized(
                        Bench.size(Feature.BORE, "10.00", "10.10", Combine.EACH, 1),
                        MaterialModifier.MMC,
                        FeatureOfSize.HOLE)
                .read(1, bore)
                .read(2, "20", "15")
                .finding(2);
        assertEquals(standing, found.verdict().standing());
    }

    /** A bore of 9.99 that is used as it is gets no larger: it is out, with no bonus, and so is its position. */
    @Test
    void aSizeThatIsUsedAsItIsIsNotCutAnyMore() {
        Bench bench = sized(BORE, MaterialModifier.MMC, FeatureOfSize.HOLE)
                .read(1, "9.99", "9.99")
                .read(2, "20", "15");
        assertEquals(VerdictKind.OPEN, bench.finding(2).verdict().standing());
        bench.did(new StepEvent.DispositionSigned(1, Disposition.USE_AS_IS, "Agreed", "Design office"));
        PositionFinding found = (PositionFinding) bench.finding(2);
        assertEquals(VerdictKind.FAIL, found.verdict().standing());
        assertTrue(found.sizeFailed());
        assertFalse(found.awaitsAnother());
        bench.did(new StepEvent.DispositionSigned(2, Disposition.USE_AS_IS, "Agreed", "Design office"));
        assertEquals(Outcome.CONFORMS_WITH_CONCESSIONS, bench.sheet().outcome());
    }

    /** What was read before the bore was read again is of another hole. */
    @Test
    void itLapsesWithTheSize() {
        Bench bench = sized(BORE, MaterialModifier.MMC, FeatureOfSize.HOLE)
                .read(1, "10.03", "10.05")
                .read(2, "20", "15");
        assertEquals(VerdictKind.PASS, bench.finding(2).verdict().standing());
        PositionFinding after =
                (PositionFinding) bench.read(1, "10.03", "10.05").finding(2);
        assertEquals(VerdictKind.OPEN, after.verdict().standing());
        assertEquals(2, after.missing());
    }

    /** Where the bores are read by the names of the holes, each adds to its own zone. */
    @Test
    void everyHoleHasTheBonusOfItsOwnSize() {
        SizeCheck bores = size(Feature.BORE, "10.00", "10.10", Combine.EACH, 2);
        List<TruePlace> holes = IntStream.of(1, 2)
                .mapToObj(hole ->
                        new TruePlace(Optional.of(bores.places().get(hole - 1).name()), mm("20"), mm("15")))
                .toList();
        PositionFinding found = (PositionFinding) new Bench()
                .step(bores)
                .step(position(MaterialModifier.MMC, FeatureOfSize.HOLE, holes))
                .read(1, "10.01", "10.09")
                .read(2, "20.05", "15", "20.09", "15")
                .finding(2);
        assertEquals(
                List.of(length("0.01"), length("0.09")),
                found.points().stream().map(AtPoint::bonus).toList());
        assertEquals(VerdictKind.PASS, found.verdict().standing());
    }

    /** The first hole alone is measured, 0.08 over its least: what the second has, nobody knows. */
    @ParameterizedTest
    @CsvSource({"20.05, PASS", "20.06, FAIL"})
    void aHoleThatIsNotMeasuredHasNoBonusOfAnother(String second, VerdictKind standing) {
        SizeCheck bore = size(Feature.BORE, "10.00", "10.10", Combine.EACH, 1);
        List<TruePlace> holes = List.of(
                new TruePlace(Optional.of(bore.places().get(0).name()), mm("20"), mm("15")),
                new TruePlace(Optional.of("another"), mm("20"), mm("15")));
        PositionFinding found = (PositionFinding) new Bench()
                .step(bore)
                .step(position(MaterialModifier.MMC, FeatureOfSize.HOLE, holes))
                .read(1, "10.08")
                .read(2, "20.08", "15", second, "15")
                .finding(2);
        assertEquals(standing, found.verdict().standing());
    }

    /** A wrong sign, the other axis, inches for millimetres: nothing passes by them. */
    @ParameterizedTest
    @CsvSource({"-20, 15", "15, 20", "0.787, 0.591"})
    void aCoordinateOfAnotherPlaceIsFarOff(String x, String y) {
        PositionFinding found = alone(x, y);
        assertFalse(found.farOff().isEmpty());
        assertFalse(found.verdict().passed());
        assertTrue(Plausible.spoils(found));
    }

    @Test
    void aCoordinateMayBeZeroOrLess() {
        PositionFinding found = (PositionFinding) new Bench()
                .step(position(
                        MaterialModifier.NONE,
                        FeatureOfSize.HOLE,
                        List.of(new TruePlace(Optional.empty(), mm("0"), mm("-15")))))
                .read(1, "-0.02", "-15.02")
                .finding(1);
        assertEquals(List.of(), found.farOff());
        assertEquals(VerdictKind.PASS, found.verdict().standing());
    }

    /** A quarter turn of the frame takes X to Y and Y to −X. */
    @Property
    void aTurnedFrameChangesNoVerdict(
            @ForAll @IntRange(min = -80, max = 80) int x, @ForAll @IntRange(min = -80, max = 80) int y) {
        String across = length("20").plus(thousandths(x)).millimetres().toPlainString();
        String up = length("15").plus(thousandths(y)).millimetres().toPlainString();
        String turned = length("20").minus(thousandths(y)).millimetres().toPlainString();
        String left = length("15").plus(thousandths(x)).millimetres().toPlainString();
        assertEquals(
                alone(across, up).verdict().standing(),
                alone(turned, left).verdict().standing());
        assertEquals(
                4 * (x * x + y * y) <= 100 * 100, alone(across, up).verdict().passed());
    }

    private static Length thousandths(int count) {
        return new Length(BigDecimal.valueOf(count, 3));
    }
}
