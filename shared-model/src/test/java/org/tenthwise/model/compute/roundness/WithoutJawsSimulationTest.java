package org.tenthwise.model.compute.roundness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/**
 * The advice followed where no jaw moves by itself, at two sections, on 5,000 set-ups of {@link WorkInChuck} for each
 * holding: shift up to 0.03 mm, tilt up to 0.03 in 100, three lobes of up to three tenths of the limit, 0.020, either
 * side, each move up to a tenth wrong and up to 10° aside. It comes inside, and is never told that nothing stands off
 * where it does.
 */
class WithoutJawsSimulationTest {

    private static final int SET_UPS = 5_000;
    private static final int ROUNDS = 5;
    private static final long SEED = 20_261_130;
    private static final double LIMIT = 0.020;
    /** Left alone are a shift and a lean of under a tenth of the limit each, as far as readings to 0.001 show them. */
    private static final double LEFT_ALONE = 0.005;

    private static final Length ALLOWED = Length.of("0.020", Unit.MILLIMETRE);
    private static final Length LAST_PLACE = Length.of("0.001", Unit.MILLIMETRE);

    @ParameterizedTest
    @EnumSource(names = {"FACE_PLATE", "STEADY", "UNSAID"})
    void itComesInsideAndIsNotLeftStandingOff(Holding holding) {
        Random chance = new Random(SEED);
        int[] insideAfter = new int[ROUNDS + 1];
        int leftStandingOff = 0;
        for (int i = 0; i < SET_UPS; i++) {
            Trial trial = new Trial(
                    holding,
                    new WorkInChuck(chance, chance, 0.03, 0.0003, 0.3 * LIMIT),
                    10 + 20 * chance.nextDouble(),
                    100 + 100 * chance.nextDouble());
            Optional<TruingUp> advice = trial.advice();
            int round = 0;
            while (advice.filter(told -> told.state() == TruingUp.Case.MOVE).isPresent() && round < ROUNDS) {
                trial.follow(advice.get());
                advice = trial.advice();
                round++;
            }
            leftStandingOff += advice.filter(told -> told.state() == TruingUp.Case.NOTHING_TO_MOVE)
                                    .isPresent()
                            && trial.standsOff() > LEFT_ALONE
                    ? 1
                    : 0;
            insideAfter[advice.isEmpty() ? round : ROUNDS]++;
        }
        System.out.printf(
                "%s: of %d set-ups inside as held %d, after one round %d, two %d, three %d, four %d, not by then "
                        + "%d; told that nothing stands off where it does %d%n",
                holding,
                SET_UPS,
                insideAfter[0],
                insideAfter[1],
                insideAfter[2],
                insideAfter[3],
                insideAfter[4],
                insideAfter[ROUNDS],
                leftStandingOff);
        assertEquals(0, leftStandingOff);
        assertTrue(insideAfter[ROUNDS] < SET_UPS / 100);
    }

    /** One set-up, its advice followed. */
    private record Trial(Holding holding, WorkInChuck work, double near, double far) {

        /** Absent where both sections are inside. */
        Optional<TruingUp> advice() {
            Indicated close = work.read(0, near);
            Indicated away = work.read(1, far);
            boolean inside = Stream.of(close, away)
                    .noneMatch(read -> read.swept().orElseThrow().isAbove(ALLOWED));
            return inside
                    ? Optional.empty()
                    : Optional.of(TruingUp.of(holding, BigDecimal.ZERO, ALLOWED, LAST_PLACE, close, Optional.of(away)));
        }

        double standsOff() {
            return Math.max(
                    Math.hypot(work.off(near, 0), work.off(near, 90)), Math.hypot(work.off(far, 0), work.off(far, 90)));
        }

        void follow(TruingUp advice) {
            advice.near().forEach(move -> follow(move, true));
            advice.far().forEach(move -> follow(move, holding == Holding.FACE_PLATE));
        }

        private void follow(Move move, boolean slides) {
            Optional<Eccentricity> from = move instanceof Move.Tap tap
                    ? Optional.of(tap.from())
                    : move instanceof Move.Away away ? Optional.of(away.from()) : Optional.empty();
            if (slides) {
                from.ifPresent(work::slide);
            } else {
                from.ifPresent(high -> work.tap(far, high));
            }
            if (move instanceof Move.Pack pack) {
                work.pack(near, far, pack.lean());
            }
        }
    }
}
