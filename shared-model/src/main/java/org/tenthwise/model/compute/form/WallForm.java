package org.tenthwise.model.compute.form;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * What several readings of one wall say about its form.
 *
 * <p>Taper = mean size at the greatest depth − mean size at the least. Out of round = greatest, over the depths, of the
 * largest size less the smallest at that depth. Shape by comparing the mean sizes of the depths; see {@link #of}.
 *
 * <p>On diameter, as the sizes are. Taper is more than zero where the wall widens going in; out of round is zero or
 * more. Means to 1e-12 mm, everything else exact.
 *
 * <p>Taper and shape need two different depths, bell-mouth, waist and barrel three; out of round needs two different
 * angles at one depth. Without them the part is absent. Equal readings give no taper, no out of round, an even shape.
 * Several readings at the same depth and angle count as their mean.
 *
 * <p>Source: taper as a difference of diameters and out of round as largest less smallest diameter are common practice
 * at the machine, and so is the naming of shapes; no standard fixes it. Two-point diameters do not see an odd number of
 * lobes.
 */
public record WallForm(Optional<Length> taper, Optional<Length> outOfRound, Optional<WallShape> shape) {

    /**
     * The shape is named by the first that holds, of mean sizes from the least depth to the greatest, where "more" and
     * "less" mean by more than {@code noticeable}: even, if greatest and least mean do not differ by more; bell-mouth,
     * if the first is more than every other and the others do not differ by more; uneven, if waist and barrel both
     * hold; waist, if one between the ends is less than both ends; barrel, if one between the ends is more than both;
     * taper in or out, if the last is less or more than the first; uneven.
     *
     * @param noticeable zero or more; a difference of just that much is not noticed
     */
    public static WallForm of(Collection<WallReading> readings, Length noticeable) {
        if (noticeable.signum() < 0) {
            throw new Refused("model.wall-form.noticeable-difference", noticeable);
        }
        TreeMap<Length, List<WallReading>> atKnownDepth = new TreeMap<>();
        List<WallReading> atOneDepth = new ArrayList<>();
        readings.forEach(reading -> reading.depth()
                .map(depth -> atKnownDepth.computeIfAbsent(depth, none -> new ArrayList<>()))
                .orElse(atOneDepth)
                .add(reading));
        List<AtDepth> sections = atKnownDepth.values().stream().map(AtDepth::of).toList();
        Optional<AtDepth> unplaced =
                Optional.of(atOneDepth).filter(list -> !list.isEmpty()).map(AtDepth::of);
        Optional<Profile> profile = Optional.of(
                        sections.stream().map(AtDepth::size).toList())
                .filter(sizes -> sizes.size() >= 2)
                .map(Profile::new);
        Optional<Length> outOfRound = Stream.concat(sections.stream(), unplaced.stream())
                .map(AtDepth::outOfRound)
                .flatMap(Optional::stream)
                .max(Comparator.naturalOrder());
        return new WallForm(profile.map(Profile::taper), outOfRound, profile.map(wall -> wall.shape(noticeable)));
    }
}
