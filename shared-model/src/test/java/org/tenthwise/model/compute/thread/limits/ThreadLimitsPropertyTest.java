package org.tenthwise.model.compute.thread.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.thread.ThreadSeries;
import org.tenthwise.model.thread.ThreadSide;

/** What holds for every size a standard lists. */
class ThreadLimitsPropertyTest {

    /** From the closest to the widest, of the screw and of the nut; grades that reach down to the finest pitches. */
    private static final Map<ThreadForm, List<List<String>>> CLASSES = Map.of(
            ThreadForm.UNIFIED, List.of(List.of("3A", "2A", "1A"), List.of("3B", "2B", "1B")),
            ThreadForm.METRIC, List.of(List.of("3h4h", "4h", "5h6h", "6h"), List.of("4H")),
            ThreadForm.ACME, List.of(List.of("4G", "3G", "2G"), List.of("4G", "3G", "2G")),
            ThreadForm.STUB_ACME, List.of(List.of("4G", "3G", "2G"), List.of("4G", "3G", "2G")),
            ThreadForm.TRAPEZOIDAL, List.of(List.of("7e", "8e"), List.of("7H", "8H", "9H")));

    @Provide
    Arbitrary<ScrewThread> threads() {
        return Arbitraries.of(ListedThreads.all());
    }

    @Property(tries = 100)
    void everyListedSizeHasLimitsThatAreNoProposal(@ForAll("threads") ScrewThread thread) {
        assertTrue(ThreadSeries.lists(thread));
        for (ThreadSide side : ThreadSide.values()) {
            for (String name : classes(thread, side)) {
                ThreadLimits limits = limits(thread, name, side);
                boolean doubtful = limits.remarks().contains(LimitsRemark.CLASS_NOT_LISTED);
                assertEquals(doubtful, limits.standing() == LimitsBasis.PROPOSAL);
            }
        }
    }

    @Property(tries = 100)
    void limitsStandInTheirOrder(@ForAll("threads") ScrewThread thread) {
        for (ThreadSide side : ThreadSide.values()) {
            for (String name : classes(thread, side)) {
                ThreadLimits limits = limits(thread, name, side);
                assertTrue(limits.pitchMax().isAbove(limits.pitchMin()));
                limits.majorMax()
                        .ifPresent(most ->
                                assertTrue(most.isAbove(limits.majorMin().orElseThrow())));
                limits.minorMin()
                        .ifPresent(least ->
                                assertTrue(limits.minorMax().orElseThrow().isAbove(least)));
                assertTrue(limits.majorMin().orElseThrow().isAbove(limits.pitchMax()));
                limits.minorMin()
                        .ifPresent(least -> assertTrue(limits.pitchMin().isAbove(least)));
                assertTrue(limits.pitchMax().isAbove(limits.minorMax().orElseThrow()));
            }
        }
    }

    @Property(tries = 100)
    void everyScrewGoesIntoEveryNut(@ForAll("threads") ScrewThread thread) {
        for (String screwClass : classes(thread, ThreadSide.EXTERNAL)) {
            for (String nutClass : classes(thread, ThreadSide.INTERNAL)) {
                ThreadLimits screw = limits(thread, screwClass, ThreadSide.EXTERNAL);
                ThreadLimits nut = limits(thread, nutClass, ThreadSide.INTERNAL);
                assertFalse(screw.pitchMax().isAbove(nut.pitchMin()));
                assertFalse(
                        screw.majorMax().orElseThrow().isAbove(nut.majorMin().orElseThrow()));
                assertTrue(nut.minorMin()
                        .orElseThrow()
                        .isAbove(screw.minorMax().orElseThrow().minus(Length.of("0.0005", Unit.INCH))));
            }
        }
    }

    @Property(tries = 100)
    void aWiderClassHasAWiderPitchTolerance(@ForAll("threads") ScrewThread thread) {
        for (ThreadSide side : ThreadSide.values()) {
            List<String> names = classes(thread, side);
            for (int i = 1; i < names.size(); i++) {
                assertTrue(limits(thread, names.get(i), side)
                        .pitchTolerance()
                        .isAbove(limits(thread, names.get(i - 1), side).pitchTolerance()));
            }
        }
    }

    @Property(tries = 100)
    void limitsAreWrittenInTheStepsOfTheirStandard(@ForAll("threads") ScrewThread thread) {
        ThreadLimits limits =
                limits(thread, classes(thread, ThreadSide.EXTERNAL).get(0), ThreadSide.EXTERNAL);
        assertTrue(limits.pitchMax().in(limits.unit()).scale() <= limits.places());
        assertTrue(limits.minorMax().orElseThrow().in(limits.unit()).scale() <= limits.places());
    }

    /** An inch thread whose diameter and pitch are written in millimetres is the same thread. */
    @Property(tries = 100)
    void aSizeWrittenInMillimetresHasTheSameLimits(@ForAll("threads") ScrewThread thread) {
        ScrewThread written = new ScrewThread(
                thread.form(),
                Length.of(thread.diameter().in(Unit.MILLIMETRE), Unit.MILLIMETRE),
                Length.of(thread.pitch().in(Unit.MILLIMETRE).setScale(6, RoundingMode.HALF_EVEN), Unit.MILLIMETRE),
                1);
        for (ThreadSide side : ThreadSide.values()) {
            String name = classes(thread, side).get(0);
            assertEquals(limits(thread, name, side), limits(written, name, side));
        }
    }

    private static List<String> classes(ScrewThread thread, ThreadSide side) {
        return CLASSES.get(thread.form()).get(side.ordinal());
    }

    private static ThreadLimits limits(ScrewThread thread, String name, ThreadSide side) {
        return ThreadLimits.of(ListedThreads.as(thread, name, side));
    }
}
