package org.tenthwise.model.compute.form;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;

/**
 * One size of a wall and where it was taken.
 *
 * @param depth from the mouth or the free end inwards; readings without one are taken to lie at one same depth
 * @param angleDegrees about the axis; any turn
 */
public record WallReading(Optional<Length> depth, Optional<BigDecimal> angleDegrees, Length size) {}
