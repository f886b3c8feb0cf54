package org.tenthwise.model.compute.roundness;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.quantity.Length;

/**
 * What to do, in the order of the hand, so that work that runs out of its limit comes inside.
 *
 * <p>In one section, or the near one: the eccentricity e1 there is taken away. In the far one: the lean e2 − e1, which
 * is what stands off there once the near one is true; then back to the near one, which the second move disturbs. A move
 * is worth making where it is at least a tenth of the limit and the last place of the indicator.
 *
 * <ul>
 *   <li>Four jaws: the axis with the larger part of e1 first. The jaw opposite is loosened, then this one tightened
 *       until the needle over it has fallen by that part: half the difference of the two opposite readings.
 *   <li>Nothing else has jaws that move alone. What clamps anew (three jaws, power, collet, centres) is cleaned and the
 *       work turned in it first; that changes the far section too, so nothing is said of it before it is read again.
 *   <li>Far out the jaws bend nothing: a soft mallet tilts the work, under a steady with its pads eased.
 *   <li>On a face plate every tap shifts both sections alike. Of two, it is shifted half-way between them, with the
 *       needle at the worse one; a lean that keeps the work over the limit even there is packed away first.
 * </ul>
 *
 * <p>Lengths to 1 nm, falls and shims more than zero.
 *
 * <p>No moves where what is left of the movement when the work is in the middle is over the limit by itself; where
 * nothing worth moving is found; or where points and sweep contradict each other.
 *
 * <p>Source: common practice of the lathe hand; shims by {@link JawMoves}, form by {@link FormLeft}.
 *
 * @param near moves at the only section, or at the one nearer the jaws
 * @param far moves at the far section, after those at the near one; then both are read again
 * @param formLeft the greatest of both sections
 */
public record TruingUp(Case state, List<Move> near, List<Move> far, Length formLeft) {

    /** What can be said. */
    public enum Case {
        MOVE,
        /** What stays is over the limit by itself. */
        FORM,
        /** Over the limit, but nothing stands off centre that is worth moving. */
        NOTHING_TO_MOVE,
        /** Points and sweep cannot both be right. */
        CONTRADICTION
    }

    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final BigDecimal TENTH = new BigDecimal("0.1");

    public TruingUp {
        near = List.copyOf(near);
        far = List.copyOf(far);
    }

    /**
     * @param firstJaw where jaw 1 stands, in the sense and from the origin of the angles of the fits
     * @param lastPlace of the readings by angle
     * @param atJaws what was read in the only section, or in the near one
     * @param farOut what was read in the far one
     */
    public static TruingUp of(
            Holding holding,
            BigDecimal firstJaw,
            Length limit,
            Length lastPlace,
            Indicated atJaws,
            Optional<Indicated> farOut) {
        List<Indicated> sections =
                Stream.concat(Stream.of(atJaws), farOut.stream()).toList();
        Length formLeft =
                Length.greatest(sections.stream().map(Indicated::formLeft).toList());
        Case state = sections.stream().anyMatch(Indicated::contradictsItself)
                ? Case.CONTRADICTION
                : formLeft.isAbove(limit) ? Case.FORM : Case.MOVE;
        if (state != Case.MOVE) {
            return new TruingUp(state, List.of(), List.of(), formLeft);
        }
        Hand hand = new Hand(
                holding, firstJaw, limit, Length.greatest(List.of(limit.times(TENTH), lastPlace)), atJaws, farOut);
        List<Move> near = hand.near();
        List<Move> far = hand.far();
        return new TruingUp(near.isEmpty() && far.isEmpty() ? Case.NOTHING_TO_MOVE : Case.MOVE, near, far, formLeft);
    }

    /** Works out the moves. */
    private record Hand(
            Holding holding,
            BigDecimal firstJaw,
            Length limit,
            Length worth,
            Indicated atJaws,
            Optional<Indicated> farOut) {

        private Eccentricity shift() {
            return atJaws.fit().centre();
        }

        private Optional<Eccentricity> lean() {
            return farOut.map(far -> far.fit().centre().minus(shift())).filter(lean -> isWorth(lean.amount()));
        }

        private boolean isWorth(Length length) {
            return length.compareTo(worth) >= 0;
        }

        /** Whether what stands off at a section, with what stays, runs over the limit. */
        private boolean isOver(Indicated section) {
            return section.fit()
                    .centre()
                    .amount()
                    .times(TWO)
                    .plus(section.formLeft())
                    .isAbove(limit);
        }

        /**
         * Whether the shift is to be taken away: for the near section, or for the far one where there is no lean to
         * take away.
         */
        private boolean nearIsOver() {
            return isWorth(shift().amount())
                    && (farOut.isEmpty() || isOver(atJaws) || lean().isEmpty() && isOver(farOut.orElseThrow()));
        }

        List<Move> near() {
            return switch (holding) {
                case FOUR_JAW -> jaws();
                case THREE_JAW -> nearIsOver() ? threeJaws() : List.of();
                case POWER_CHUCK -> nearIsOver() ? powerChuck() : lean().isPresent() ? softJaws() : List.of();
                case COLLET -> clampedAnew(Move.Plain.CLEAN_COLLET, Move.Plain.TURN_IN_COLLET, Move.Plain.OTHER_COLLET);
                case CENTRES ->
                    clampedAnew(Move.Plain.CLEAN_CENTRES, Move.Plain.TURN_AGAINST_DRIVER, Move.Plain.DRESS_CENTRES);
                case FACE_PLATE -> leansTooFar() || !nearIsWorse() ? List.of() : onFacePlate();
                case STEADY ->
                    farOut.isEmpty()
                            ? underSteady(Optional.of(shift()))
                            : nearIsOver() ? away(Optional.of(shift())) : List.of();
                case UNSAID -> nearIsOver() ? away(Optional.of(shift())) : List.of();
            };
        }

        List<Move> far() {
            return switch (holding) {
                case FOUR_JAW -> tap(lean());
                case THREE_JAW -> nearIsOver() ? List.of() : tap(lean());
                case UNSAID -> nearIsOver() ? List.of() : away(lean());
                case POWER_CHUCK, COLLET, CENTRES -> List.of();
                case FACE_PLATE ->
                    leansTooFar()
                            ? List.of(Move.Plain.CLEAN_FACES, new Move.Pack(lean().orElseThrow()))
                            : nearIsWorse() ? List.of() : onFacePlate();
                case STEADY -> nearIsOver() ? List.of() : underSteady(lean());
            };
        }

        private List<Move> jaws() {
            return JawMoves.of(atJaws.fit(), JawMoves.evenly(4, firstJaw)).stream()
                    .filter(move -> isWorth(move.in()))
                    .sorted(Comparator.comparing(JawMove::in).reversed())
                    .<Move>map(move -> new Move.Jaw((move.jaw() + 1) % 4 + 1, move.jaw(), move.in()))
                    .toList();
        }

        private List<Move> threeJaws() {
            List<Move> moves = new ArrayList<>(List.of(Move.Plain.CLEAN_JAWS, Move.Plain.TURN_IN_JAWS));
            moves.addAll(shims());
            moves.add(Move.Plain.BORE_SOFT_JAWS);
            return moves;
        }

        private List<Move> powerChuck() {
            List<Move> moves = new ArrayList<>(softJaws());
            moves.addAll(shims());
            return moves;
        }

        private static List<Move> softJaws() {
            return List.of(Move.Plain.CLEAN_JAWS, Move.Plain.TURN_IN_JAWS, Move.Plain.BORE_SOFT_JAWS);
        }

        private List<Move> shims() {
            return JawMoves.of(atJaws.fit(), JawMoves.evenly(3, firstJaw)).stream()
                    .filter(move -> isWorth(move.in()))
                    .sorted(Comparator.comparing(JawMove::in).reversed())
                    .<Move>map(move -> new Move.Shim(move.jaw(), move.in()))
                    .toList();
        }

        private List<Move> clampedAnew(Move... moves) {
            return isWorth(shift().amount()) || lean().isPresent() ? List.of(moves) : List.of();
        }

        private static List<Move> away(Optional<Eccentricity> from) {
            return from.<Move>map(Move.Away::new).stream().toList();
        }

        private static List<Move> tap(Optional<Eccentricity> from) {
            return from.<Move>map(Move.Tap::new).stream().toList();
        }

        private List<Move> underSteady(Optional<Eccentricity> from) {
            return from.filter(off -> isWorth(off.amount()))
                    .<List<Move>>map(off -> List.of(Move.Plain.EASE_PADS, new Move.Tap(off), Move.Plain.PADS_BACK))
                    .orElse(List.of());
        }

        /**
         * Whether no shift alone brings both sections in: at best each stands off by half the lean, as where there is
         * no shift left.
         */
        private boolean leansTooFar() {
            return lean().filter(lean -> !isWorth(offAtBoth().amount())
                            || lean.amount()
                                    .plus(Length.greatest(List.of(
                                            atJaws.formLeft(),
                                            farOut.orElseThrow().formLeft())))
                                    .isAbove(limit))
                    .isPresent();
        }

        /**
         * What a shift of both sections takes away: the eccentricity of the only one, or half-way between that of two.
         */
        private Eccentricity offAtBoth() {
            return farOut.map(far -> shift().halfWayTo(far.fit().centre())).orElse(shift());
        }

        private boolean nearIsWorse() {
            return farOut.filter(far -> far.fit().eccentricity().isAbove(shift().amount()))
                    .isEmpty();
        }

        private List<Move> onFacePlate() {
            Eccentricity off = offAtBoth();
            return isWorth(off.amount())
                    ? List.of(Move.Plain.EASE_CLAMPS, new Move.Tap(off), Move.Plain.TIGHTEN_CLAMPS)
                    : List.of();
        }
    }
}
