package org.tenthwise.model.compute.roundness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/**
 * The advice followed in the order given, on 10,000 set-ups of {@link WorkInChuck}, whose assumptions stand there:
 * shift up to 0.3 mm, tilt up to 0.1 mm in 100, three lobes of up to a quarter of the limit either side, limit 0.020,
 * readings to 0.001, each move taken up to a tenth wrong. One round is: read all eight places and sweep, in each
 * section; follow the advice; sweep again. Whoever finds it inside the limit stops.
 */
class TruingUpSimulationTest {

    private static final int SET_UPS = 10_000;
    private static final long SEED = 20_261_129;
    private static final double LIMIT = 0.020;
    private static final Length ALLOWED = Length.of("0.020", Unit.MILLIMETRE);
    private static final Length LAST_PLACE = Length.of("0.001", Unit.MILLIMETRE);

    /** What became of all set-ups. */
    private record Outcome(int[] insideAfter, int wrongMoves, int moves) {

        double insideWithin(int rounds) {
            int inside = 0;
            for (int round = 0; round <= rounds; round++) {
                inside += insideAfter[round];
            }
            return (double) inside / SET_UPS;
        }

        void print(String what) {
            System.out.printf(
                    "%s: of %d set-ups inside as clamped %d, after one round %d, after two %d, never %d; %d moves, "
                            + "%d of them wrong%n",
                    what, SET_UPS, insideAfter[0], insideAfter[1], insideAfter[2], insideAfter[3], moves, wrongMoves);
        }
    }

    @Test
    void inOneSectionItIsInsideWithinTwoRoundsAndTheWrongJawIsNeverTightened() {
        Outcome outcome = follow(false, UnaryOperator.identity());
        outcome.print("One section");
        assertTrue(outcome.insideWithin(2) >= 0.95);
        assertEquals(0, outcome.wrongMoves());
    }

    @Test
    void inTwoSectionsItIsInsideWithinTwoRoundsAndNoMoveIsWrong() {
        Outcome outcome = follow(true, UnaryOperator.identity());
        outcome.print("Two sections");
        assertTrue(outcome.insideWithin(2) >= 0.95);
        assertEquals(0, outcome.wrongMoves());
    }

    /** Whoever counts the jaws the wrong way round must not get there, or these tests show nothing. */
    @Test
    void withJawsTwoAndFourExchangedItIsNotInsideAndMovesAreWrong() {
        Outcome outcome = follow(false, TruingUpSimulationTest::twoAndFourExchanged);
        outcome.print("One section, jaws 2 and 4 exchanged");
        assertTrue(outcome.insideWithin(2) < 0.5);
        assertTrue(outcome.wrongMoves() > SET_UPS / 2);
    }

    /** Nor whoever takes what a full turn shows for what the needle over the jaw shows. */
    @Test
    void withEachMoveTwiceAsFarItIsNotInside() {
        Outcome outcome = follow(
                false,
                move -> move instanceof Move.Jaw jaw
                        ? new Move.Jaw(jaw.loosen(), jaw.tighten(), jaw.fall().times(BigDecimal.valueOf(2)))
                        : move);
        outcome.print("One section, each move twice as far");
        assertTrue(outcome.insideWithin(2) < 0.5);
    }

    /**
     * Where jaw 1 stands, which way the jaws are numbered, where the needle is: the advice is the same to the last
     * figure.
     */
    @Test
    void fromWhicheverSideItIsReadTheAdviceIsTheSame() {
        for (int i = 0; i < 500; i++) {
            List<TruingUp> advices = new ArrayList<>();
            for (int side = 0; side < 4; side++) {
                WorkInChuck work = new WorkInChuck(new Random(SEED + i), new Random(side), 0.3, 0.001, 0.005);
                advices.add(advice(work.read(0, 20), Optional.of(work.read(1, 150))));
            }
            assertEquals(1, advices.stream().distinct().count(), advices::toString);
        }
    }

    private static Move twoAndFourExchanged(Move move) {
        return move instanceof Move.Jaw jaw
                ? new Move.Jaw(exchanged(jaw.loosen()), exchanged(jaw.tighten()), jaw.fall())
                : move;
    }

    private static int exchanged(int jaw) {
        return jaw % 2 == 0 ? 6 - jaw : jaw;
    }

    private static TruingUp advice(Indicated near, Optional<Indicated> far) {
        return TruingUp.of(Holding.FOUR_JAW, BigDecimal.ZERO, ALLOWED, LAST_PLACE, near, far);
    }

    private static Outcome follow(boolean twoSections, UnaryOperator<Move> understood) {
        Outcome sum = new Outcome(new int[4], 0, 0);
        Random chance = new Random(SEED);
        for (int i = 0; i < SET_UPS; i++) {
            WorkInChuck work = new WorkInChuck(chance, chance, 0.3, twoSections ? 0.001 : 0, LIMIT / 4);
            sum = new Trial(
                            work,
                            10 + 20 * chance.nextDouble(),
                            100 + 100 * chance.nextDouble(),
                            twoSections,
                            understood)
                    .run(sum);
        }
        return sum;
    }

    /** One set-up, its advice followed. */
    private record Trial(
            WorkInChuck work, double near, double far, boolean twoSections, UnaryOperator<Move> understood) {

        Outcome run(Outcome before) {
            int wrong = before.wrongMoves();
            int moves = before.moves();
            int round = 0;
            while (round < 3) {
                Indicated nearRead = work.read(0, near);
                Optional<Indicated> farRead = twoSections ? Optional.of(work.read(1, far)) : Optional.empty();
                boolean showsInside = !nearRead.swept().orElseThrow().isAbove(ALLOWED)
                        && farRead.filter(read -> read.swept().orElseThrow().isAbove(ALLOWED))
                                .isEmpty();
                if (showsInside || round == 2) {
                    break;
                }
                TruingUp advice = advice(nearRead, farRead);
                for (Move move : advice.near()) {
                    wrong += makesWorse(understood.apply(move)) ? 1 : 0;
                    moves++;
                }
                for (Move move : advice.far()) {
                    wrong += makesWorse(understood.apply(move)) ? 1 : 0;
                    moves++;
                }
                round++;
            }
            before.insideAfter()[isInside() ? round : 3]++;
            return new Outcome(before.insideAfter(), wrong, moves);
        }

        private boolean isInside() {
            return work.runOut(0, near) <= LIMIT && (!twoSections || work.runOut(1, far) <= LIMIT);
        }

        /**
         * Makes the move; wrong is one after which the work stands further off along the line of the jaw, or leans more
         * the way it was tapped.
         */
        private boolean makesWorse(Move move) {
            if (move instanceof Move.Jaw jaw) {
                double place = 90.0 * (jaw.tighten() - 1);
                double before = work.off(near, place);
                work.tighten(jaw.tighten(), jaw.fall());
                return Math.abs(work.off(near, place)) > Math.abs(before);
            }
            Eccentricity from = ((Move.Tap) move).from();
            double place = from.highAtDegrees().doubleValue();
            double before = work.off(far, place) - work.off(near, place);
            work.tap(far, from);
            return Math.abs(work.off(far, place) - work.off(near, place)) > Math.abs(before);
        }
    }
}
