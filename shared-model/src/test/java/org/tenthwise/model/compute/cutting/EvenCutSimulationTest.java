package org.tenthwise.model.compute.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.compute.cutting.EvenCut.NoCut;
import org.tenthwise.model.compute.cutting.EvenCut.Offered;
import org.tenthwise.model.compute.cutting.EvenCut.Reason;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/** A hundred thousand parts, cut exactly as advised, beside a cut that is found by trying one step after the other. */
class EvenCutSimulationTest {

    private static final int PARTS = 100_000;
    private static final long SEED = 20261129;
    private static final int PLACES = 4;

    private final Map<Reason, Integer> refused = new EnumMap<>(Reason.class);
    private final Map<TrialPart.Form, Integer> offered = new EnumMap<>(TrialPart.Form.class);
    private int byTheMiddle;
    private int byTheFirst;
    private int cuts;
    private int pastSize;
    private String first = "";

    @Test
    void noPlaceIsEverPastSizeAndACutThatThereIsIsFound() {
        Random random = new Random(SEED);
        for (int i = 0; i < PARTS; i++) {
            follow(TrialPart.of(random), random, i);
        }
        int brought = offered.values().stream().mapToInt(Integer::intValue).sum();
        System.out.printf(
                "%d parts from seed %d, %d cuts as advised: %d brought in %s, %d refused %s; past size after a cut: "
                        + "%d%n",
                PARTS, SEED, cuts, brought, offered, PARTS - brought, refused, pastSize);
        assertEquals(0, pastSize, first);
        System.out.printf(
                "the same parts cut by the middle of the readings: %d past size somewhere; by the first reading "
                        + "alone: %d%n",
                byTheMiddle, byTheFirst);
        assertEquals(
                PARTS,
                brought + refused.values().stream().mapToInt(Integer::intValue).sum());
        for (TrialPart.Form form : TrialPart.Form.values()) {
            assertTrue(offered.get(form) > PARTS / 50, () -> "too few of " + form + " to prove anything");
        }
        for (Reason reason : List.of(Reason.UNEVEN, Reason.BELOW_LEAST_CUT, Reason.PAST_SIZE)) {
            assertTrue(refused.get(reason) > PARTS / 50, () -> "too few " + reason + " to prove anything");
        }
    }

    private void follow(TrialPart part, Random random, int number) {
        Supplier<String> which = () -> "part %d, %s, %s".formatted(number, part, Arrays.toString(part.walls()));
        EvenCut advice = advice(part);
        long found = part.isAnywherePastSize(0) ? -1 : part.byTrying();
        if (advice instanceof Offered cut) {
            long off = off(part, cut.change());
            assertEquals(found, off, which);
            assertFalse(part.isTooLight(off), which);
            offered.merge(part.form(), 1, Integer::sum);
            countOtherWays(part);
            cutInGoes(part, random, which);
            TrialPart then = part.cut(off);
            count(then, which);
            assertTrue(then.isEverywhereInside(), which);
            assertTrue(
                    advice(then) instanceof NoCut rest && rest.reason() == Reason.BELOW_LEAST_CUT,
                    () -> which.get() + ": nothing is left to do");
        } else {
            refuse(part, (NoCut) advice, found, which);
        }
    }

    /**
     * The tool may leave on up to a fifth of each cut, everywhere alike: measure, cut what is advised then, and so on.
     */
    private void cutInGoes(TrialPart part, Random random, Supplier<String> which) {
        TrialPart now = part;
        int goes = 0;
        while (advice(now) instanceof Offered cut) {
            long off = off(now, cut.change());
            now = now.cut(Math.max(off - Math.round(off * random.nextInt(20) / 100.0), 1));
            count(now, which);
            goes++;
            assertTrue(goes < 50, () -> which.get() + ": no end of it");
        }
        cuts += goes;
    }

    private void refuse(TrialPart part, NoCut no, long found, Supplier<String> which) {
        refused.merge(no.reason(), 1, Integer::sum);
        long safe = Math.abs(tenths(no.safe().orElseThrow()));
        switch (no.reason()) {
            case PAST_SIZE -> assertTrue(part.isAnywherePastSize(0) && safe == 0, which);
            case UNEVEN -> assertEquals(-1, found, which);
            case BELOW_LEAST_CUT -> assertTrue(found >= 0 && part.isTooLight(found), which);
        }
        if (no.reason() != Reason.PAST_SIZE) {
            countOtherWays(part);
            assertEquals(0, safe % part.step(), which);
            if (safe > 0) {
                count(part.cut(safe), which);
            }
            assertTrue(
                    part.cut(safe + part.step()).isAnywherePastSize(part.guard()),
                    () -> which.get() + ": more would be safe");
        }
    }

    private void count(TrialPart cut, Supplier<String> which) {
        if (cut.isAnywherePastSize(cut.guard())) {
            pastSize++;
            first = first.isEmpty() ? which.get() : first;
        }
    }

    /** What comes of rules of thumb: only metal left counts, as nobody puts any on. */
    private void countOtherWays(TrialPart part) {
        long middle = (part.greatest() + part.smallest()) / 2;
        long sense = part.feature() == Feature.DIAMETER ? 1 : -1;
        byTheMiddle += part.cut(Math.max(0, sense * (middle - part.aim()))).isAnywherePastSize(0) ? 1 : 0;
        byTheFirst +=
                part.cut(Math.max(0, sense * (part.walls()[0] - part.aim()))).isAnywherePastSize(0) ? 1 : 0;
    }

    private static EvenCut advice(TrialPart part) {
        Limits limits = Limits.between(written(part.lower()), written(part.upper()));
        Optional<Length> least = part.least() == 0 ? Optional.empty() : Optional.of(length(part.least()));
        List<Length> sizes = Arrays.stream(part.walls())
                .mapToObj(EvenCutSimulationTest::length)
                .toList();
        return EvenCut.of(
                part.feature(),
                limits,
                length(part.guard()),
                length(part.aim()),
                least,
                Optional.of(length(part.step())),
                sizes);
    }

    /** What comes off; a change that would put metal on is less than zero. */
    private static long off(TrialPart part, Length change) {
        return part.feature() == Feature.DIAMETER ? -tenths(change) : tenths(change);
    }

    private static Written written(long tenths) {
        return new Written(BigDecimal.valueOf(tenths, PLACES).toPlainString(), Unit.MILLIMETRE);
    }

    private static Length length(long tenths) {
        return new Length(BigDecimal.valueOf(tenths, PLACES));
    }

    private static long tenths(Length length) {
        return length.millimetres().movePointRight(PLACES).longValueExact();
    }
}
