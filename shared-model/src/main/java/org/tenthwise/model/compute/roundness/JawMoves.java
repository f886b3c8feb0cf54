package org.tenthwise.model.compute.roundness;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * What to do at the jaws so that work that runs out by eccentricity runs true.
 *
 * <p>Component at a jaw = cosPart · cos(jaw) + sinPart · sin(jaw). Four jaws that move on their own: move = component.
 * Three jaws that a scroll moves together: shim = component less the least of the three components.
 *
 * <p>Lengths to 1 nm; more than nought pushes the work away from the jaw. Of four jaws the one opposite always backs out by
 * as much as the first goes in. Of three no shim is less than nought, and at least one is nought.
 *
 * <p>Work that runs true gives nought at every jaw.
 *
 * <p>Source: four jaws, half the difference of opposite readings, common practice, from the fitted circle rather than from
 * two readings so that a high spot between jaws needs no guessing. Three jaws, first-order geometry: a shim s under one jaw
 * of three moves the work 2s/3 away from it, so that moves add up as 2/3 of the sum of shim times direction; the components
 * meet that sum, and taking the same amount from all three leaves it as it is.
 */
public final class JawMoves {

    private JawMoves() {
    }

    /**
     * @param jaws             3 (scroll chuck, shims) or 4 (jaws that move on their own), evenly spaced
     * @param firstJawDegrees  where jaw 1 stands, in the sense and from the origin of the angles of {@code fit}
     * @throws IllegalArgumentException for any other number of jaws
     */
    public static List<JawMove> of(CircleFit fit, int jaws, BigDecimal firstJawDegrees) {
        if (jaws != 3 && jaws != 4) {
            throw new IllegalArgumentException("Moves are known for three jaws and for four, not for %d".formatted(jaws));
        }
        List<BigDecimal> places = IntStream.range(0, jaws)
                .mapToObj(jaw -> Turn.within(firstJawDegrees.add(BigDecimal.valueOf(360L / jaws * jaw))))
                .toList();
        List<Length> moves = jaws == 4 ? onTheirOwn(fit, places) : shims(fit, places);
        return IntStream.range(0, jaws).mapToObj(jaw -> new JawMove(jaw + 1, places.get(jaw), moves.get(jaw))).toList();
    }

    private static List<Length> onTheirOwn(CircleFit fit, List<BigDecimal> places) {
        Length first = Nanometres.round(component(fit, places.get(0)));
        Length second = Nanometres.round(component(fit, places.get(1)));
        return List.of(first, second, first.negated(), second.negated());
    }

    private static List<Length> shims(CircleFit fit, List<BigDecimal> places) {
        double[] components = places.stream().mapToDouble(place -> component(fit, place)).toArray();
        double least = Math.min(components[0], Math.min(components[1], components[2]));
        return Stream.of(0, 1, 2).map(jaw -> Nanometres.round(components[jaw] - least)).toList();
    }

    private static double component(CircleFit fit, BigDecimal degrees) {
        double angle = Turn.radians(degrees);
        return Nanometres.of(fit.cosPart()) * Math.cos(angle) + Nanometres.of(fit.sinPart()) * Math.sin(angle);
    }
}
