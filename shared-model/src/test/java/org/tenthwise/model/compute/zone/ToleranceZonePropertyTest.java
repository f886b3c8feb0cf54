package org.tenthwise.model.compute.zone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.tenthwise.model.compute.fit.Clearance;
import org.tenthwise.model.quantity.Length;

/** What holds for every zone at every size. */
class ToleranceZonePropertyTest {

    private static final List<String> CLEAR = List.of("a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h");

    @Provide
    Arbitrary<String> letters() {
        return Arbitraries.of(ZoneTablesTest.LETTERS);
    }

    /** From k on, where a hole and its shaft go past the size together. */
    @Provide
    Arbitrary<String> tight() {
        return Arbitraries.of(
                ZoneTablesTest.LETTERS.subList(ZoneTablesTest.LETTERS.indexOf("k"), ZoneTablesTest.LETTERS.size()));
    }

    @Provide
    Arbitrary<Grade> hole() {
        return Arbitraries.of(Grade.IT5, Grade.IT6, Grade.IT7, Grade.IT8);
    }

    @Provide
    Arbitrary<String> clear() {
        return Arbitraries.of(CLEAR);
    }

    @Property
    void zoneIsAsWideAsItsGradeAndLiesAboutItsSize(
            @ForAll("letters") String shaft,
            @ForAll boolean hole,
            @ForAll Grade grade,
            @ForAll @BigRange(min = "0.001", max = "500") @Scale(3) BigDecimal size) {
        String letters = hole ? shaft.toUpperCase(Locale.ROOT) : shaft;
        ZoneTablesTest.limits(letters, grade, size).ifPresent(zone -> {
            assertEquals(StandardTolerance.of(grade, new Length(size)), zone.width());
            assertEquals(zone.upper(), zone.greatest().minus(new Length(size)));
            assertEquals(zone.lower(), zone.least().minus(new Length(size)));
        });
    }

    @Property
    void holeFitsTheBasicShaftAsTheBasicHoleFitsItsShaft(
            @ForAll("clear") String shaft,
            @ForAll Grade wide,
            @ForAll Grade narrow,
            @ForAll @BigRange(min = "0.001", max = "500") @Scale(3) BigDecimal size) {
        Optional<ZoneLimits> hole = ZoneTablesTest.limits(shaft.toUpperCase(Locale.ROOT), wide, size);
        Optional<ZoneLimits> mirrored = ZoneTablesTest.limits(shaft, wide, size);
        Optional<ZoneLimits> basicShaft = ZoneTablesTest.limits("h", narrow, size);
        Optional<ZoneLimits> basicHole = ZoneTablesTest.limits("H", narrow, size);
        assertEquals(mirrored.isPresent(), hole.isPresent());
        assertEquals(basicShaft.isPresent(), basicHole.isPresent());
        if (hole.isPresent() && basicShaft.isPresent()) {
            Clearance fit = play(hole.get(), basicShaft.get());
            assertEquals(fit, play(basicHole.get(), mirrored.get()));
            assertTrue(fit.least().signum() >= 0);
        }
    }

    /**
     * What the rule with Δ is for, ISO 286-1:2010, Table 3: H7/p6 has the play of P7/h6, and so on to grade 8 for K, M
     * and N and to grade 7 for the rest. The standard itself sets M6 over 250 up to 315 mm apart.
     */
    @Property
    void holeWithTheFinerBasicShaftFitsAsTheBasicHoleWithItsFinerShaft(
            @ForAll("tight") String shaft,
            @ForAll("hole") Grade grade,
            @ForAll @BigRange(min = "3.001", max = "500") @Scale(3) BigDecimal size) {
        Assume.that(grade != Grade.IT8 || List.of("k", "m", "n").contains(shaft));
        Assume.that(!(shaft.equals("m")
                && grade == Grade.IT6
                && size.compareTo(BigDecimal.valueOf(250)) > 0
                && size.compareTo(BigDecimal.valueOf(315)) <= 0));
        Grade finer = grade.finer().orElseThrow();
        Optional<ZoneLimits> hole = ZoneTablesTest.limits(shaft.toUpperCase(Locale.ROOT), grade, size);
        Optional<ZoneLimits> mirrored = ZoneTablesTest.limits(shaft, finer, size);
        assertEquals(mirrored.isPresent(), hole.isPresent());
        if (hole.isPresent()) {
            assertEquals(
                    play(ZoneTablesTest.limits("H", grade, size).orElseThrow(), mirrored.get()),
                    play(hole.get(), ZoneTablesTest.limits("h", finer, size).orElseThrow()));
        }
    }

    @Property
    void nothingChangesInsideAStep(
            @ForAll("letters") String shaft,
            @ForAll boolean hole,
            @ForAll Grade grade,
            @ForAll @BigRange(min = "1.001", max = "500") @Scale(3) BigDecimal size) {
        String letters = hole ? shaft.toUpperCase(Locale.ROOT) : shaft;
        BigDecimal edge = SizeTable.read("shaft-deviations").upTo(size);
        Optional<ZoneLimits> here = ZoneTablesTest.limits(letters, grade, size);
        Optional<ZoneLimits> there = ZoneTablesTest.limits(letters, grade, edge);
        assertEquals(there.map(ZoneLimits::upper), here.map(ZoneLimits::upper));
        assertEquals(there.map(ZoneLimits::lower), here.map(ZoneLimits::lower));
    }

    @Property
    void sizeOutsideTheTablesIsAlwaysRefused(
            @ForAll("letters") String letters,
            @ForAll Grade grade,
            @ForAll @BigRange(min = "500.001", max = "100000") @Scale(3) BigDecimal size,
            @ForAll boolean below) {
        assertTrue(ZoneTablesTest.limits(letters, grade, below ? size.negate() : size)
                .isEmpty());
    }

    private static Clearance play(ZoneLimits hole, ZoneLimits shaft) {
        return Clearance.of(List.of(hole.least(), hole.greatest()), List.of(shaft.least(), shaft.greatest()));
    }
}
