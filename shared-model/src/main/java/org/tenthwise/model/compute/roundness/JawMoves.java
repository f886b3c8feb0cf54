package org.tenthwise.model.compute.roundness;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * What to do at the jaws so that work that runs out by eccentricity runs true.
 *
 * <p>Component at a jaw = cosPart · cos(jaw) + sinPart · sin(jaw). Four jaws that move on their own: move = component.
 * Three jaws that a scroll moves together: shim = component less the least of the three components.
 *
 * <p>Lengths to 1 nm; more than zero pushes the work away from the jaw. Of four jaws the one opposite always backs out
 * by as much as the first goes in. Of three no shim is less than zero, and at least one is zero.
 *
 * <p>Work that runs true gives zero at every jaw.
 *
 * <p>Source: four jaws, half the difference of opposite readings, common practice, from the fitted circle rather than
 * from two readings so that a high spot between jaws needs no guessing. Three jaws, first-order geometry: a shim s
 * under one jaw of three moves the work 2s/3 away from it, so that moves add up as 2/3 of the sum of shim times
 * direction; the components meet that sum, and taking the same amount from all three leaves it as it is.
 */
public final class JawMoves {

    private JawMoves() {}

    /**
     * @param jawsDegrees where the jaws stand, jaw 1 first, in the sense and from the origin of the angles of
     *     {@code fit}: 3 (scroll chuck, shims) or 4 (jaws that move on their own), evenly spaced, in any order
     * @throws IllegalArgumentException for any other number of jaws, or for jaws that are not evenly spaced
     */
    public static List<JawMove> of(CircleFit fit, List<BigDecimal> jawsDegrees) {
        List<BigDecimal> places = jawsDegrees.stream().map(Angle::inOneTurn).toList();
        check(places);
        List<Length> moves = places.size() == 4 ? onTheirOwn(fit, places) : shims(fit, places);
        return IntStream.range(0, places.size())
                .mapToObj(jaw -> new JawMove(jaw + 1, moves.get(jaw)))
                .toList();
    }

    /**
     * Where the jaws of a chuck stand if jaw 1 stands at {@code firstDegrees} and the others follow in the sense of
     * growing angles.
     *
     * @throws IllegalArgumentException for any number of jaws but 3 and 4
     */
    public static List<BigDecimal> evenly(int jaws, BigDecimal firstDegrees) {
        checkNumber(jaws);
        return IntStream.range(0, jaws)
                .mapToObj(jaw -> Angle.inOneTurn(firstDegrees.add(BigDecimal.valueOf(360L / jaws * jaw))))
                .toList();
    }

    private static void check(List<BigDecimal> places) {
        checkNumber(places.size());
        if (!new TreeSet<>(places).equals(new TreeSet<>(evenly(places.size(), places.get(0))))) {
            throw new Refused(
                    "model.jaw-moves.jaws-evenly",
                    places.stream().map(BigDecimal::toPlainString).toList(),
                    places.size(),
                    360 / places.size());
        }
    }

    private static void checkNumber(int jaws) {
        if (jaws != 3 && jaws != 4) {
            throw new Refused("model.jaw-moves.moves-known", jaws);
        }
    }

    private static List<Length> onTheirOwn(CircleFit fit, List<BigDecimal> places) {
        return places.stream().map(fit.centre()::towards).toList();
    }

    private static List<Length> shims(CircleFit fit, List<BigDecimal> places) {
        double[] components =
                places.stream().mapToDouble(fit.centre()::component).toArray();
        double least = Arrays.stream(components).min().orElseThrow();
        return Arrays.stream(components)
                .mapToObj(component -> Nanometres.round(component - least))
                .toList();
    }
}
