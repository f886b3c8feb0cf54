package org.tenthwise.model.compute.form;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tenthwise.model.compute.roundness.Angle;
import org.tenthwise.model.quantity.Length;

/**
 * The readings at one depth. Several at the same angle count as their mean.
 *
 * @param size mean size over the angles
 * @param outOfRound largest less smallest size over the angles; absent with fewer than two of them
 */
record AtDepth(Length size, Optional<Length> outOfRound) {

    /** @param readings one at least */
    static AtDepth of(Collection<WallReading> readings) {
        Map<Optional<BigDecimal>, List<Length>> byAngle = readings.stream()
                .collect(Collectors.groupingBy(
                        reading -> reading.angleDegrees().map(Angle::inOneTurn),
                        Collectors.mapping(WallReading::size, Collectors.toList())));
        List<Length> sizes = byAngle.values().stream().map(Length::mean).toList();
        List<Length> angled = byAngle.entrySet().stream()
                .filter(entry -> entry.getKey().isPresent())
                .map(entry -> Length.mean(entry.getValue()))
                .toList();
        return new AtDepth(
                Length.mean(sizes),
                angled.size() < 2
                        ? Optional.empty()
                        : Optional.of(Length.greatest(angled).minus(Length.least(angled))));
    }
}
