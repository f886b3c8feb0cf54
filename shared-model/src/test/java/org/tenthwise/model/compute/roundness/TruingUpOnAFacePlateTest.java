package org.tenthwise.model.compute.roundness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.compute.roundness.WorkIndicated.mm;
import static org.tenthwise.model.compute.roundness.WorkIndicated.one;
import static org.tenthwise.model.compute.roundness.WorkIndicated.tap;
import static org.tenthwise.model.compute.roundness.WorkIndicated.two;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.plan.Holding;

/** Clamped work is tapped or packed; common practice of the lathe, figures by hand. */
class TruingUpOnAFacePlateTest {

    @Test
    void onAFacePlateClampsAreEasedBeforeTheWorkIsTapped() {
        assertEquals(
                List.of(Move.Plain.EASE_CLAMPS, tap("0.016", "0"), Move.Plain.TIGHTEN_CLAMPS),
                one(Holding.FACE_PLATE, "0.032;0.016;0;0.016").near());
    }

    /** A lean of 0.020 can be halved by a shift, to 0.010 off either way, and just comes in; one of 0.022 cannot. */
    @Test
    void onAFacePlateALeanThatNoShiftBringsInIsPackedFirst() {
        TruingUp packed = two(Holding.FACE_PLATE, "0.032;0.016;0;0.016", "0.054;0.016;-0.022;0.016");
        assertEquals(List.of(), packed.near());
        assertEquals(
                List.of(Move.Plain.CLEAN_FACES, new Move.Pack(new Eccentricity(mm("0.022"), mm("0")))), packed.far());
        TruingUp shifted = two(Holding.FACE_PLATE, "0.032;0.016;0;0.016", "0.052;0.016;-0.020;0.016");
        assertEquals(List.of(), shifted.near());
        assertEquals(List.of(Move.Plain.EASE_CLAMPS, tap("0.026", "0"), Move.Plain.TIGHTEN_CLAMPS), shifted.far());
        assertEquals(
                List.of(Move.Plain.EASE_CLAMPS, tap("0.016", "0"), Move.Plain.TIGHTEN_CLAMPS),
                two(Holding.FACE_PLATE, "0.032;0.016;0;0.016", "0.032;0.016;0;0.016")
                        .near());
    }

    /**
     * Leaning by 0.016, with an oval of ± 0.003 or ± 0.002 far out: half-way it runs out by 0.016 and what stays, 0.022
     * or 0.020.
     */
    @Test
    void onAFacePlateWhatStaysCountsWithTheLean() {
        assertTrue(two(Holding.FACE_PLATE, "0.032;0.016;0;0.016", "0.035;-0.003;-0.029;-0.003")
                .far()
                .contains(new Move.Pack(new Eccentricity(mm("0.016"), mm("0")))));
        assertTrue(two(Holding.FACE_PLATE, "0.032;0.016;0;0.016", "0.034;-0.002;-0.030;-0.002")
                .far()
                .contains(tap("0.024", "0")));
    }

    /**
     * 0.012 off at one and true at the other is as far off, 0.006, at both when shifted by half; by all of it the other
     * is 0.012 off.
     */
    @Test
    void onAFacePlateWhatIsTakenFromOneSectionIsNotPutOnTheOther() {
        String off = "0.024;0.012;0;0.012";
        String on = "0;0;0;0";
        List<Move> half = List.of(Move.Plain.EASE_CLAMPS, tap("0.006", "0"), Move.Plain.TIGHTEN_CLAMPS);
        assertEquals(half, two(Holding.FACE_PLATE, off, on).near());
        assertEquals(List.of(), two(Holding.FACE_PLATE, off, on).far());
        assertEquals(half, two(Holding.FACE_PLATE, on, off).far());
        assertEquals(List.of(), two(Holding.FACE_PLATE, on, off).near());
    }

    /** As far off to one side near the jaws as to the other far out: shifted it gets no better. */
    @Test
    void onAFacePlateALeanAloneIsPackedAway() {
        TruingUp advice = two(Holding.FACE_PLATE, "0.022;0.012;0.002;0.012;0.022", "-0.010;0;0.010;0;0.020");
        assertEquals(
                List.of(Move.Plain.CLEAN_FACES, new Move.Pack(new Eccentricity(mm("-0.020"), mm("0")))), advice.far());
        assertEquals(List.of(), advice.near());
    }
}
