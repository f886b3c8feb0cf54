package org.tenthwise.model.callout;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * One figure of a callout.
 *
 * @param value zero or more, with its places, in {@code unit}
 * @param unit written behind it, or of its marks; absent where it is the drawing's
 * @param isFraction drawn as a fraction of an inch
 */
record CalloutFigure(BigDecimal value, Optional<Unit> unit, boolean isFraction) {

    boolean isZero() {
        return value.signum() == 0;
    }

    boolean isOfAngle() {
        return unit.filter(Unit::isOfAngle).isPresent();
    }

    BigDecimal in(Unit wanted) {
        return unit.filter(own -> own != wanted && !isZero())
                .map(own -> Length.of(value, own).in(wanted))
                .orElse(value);
    }

    /**
     * The one unit of all these: of angles the finest that is written; a zero may go without one. A unit of length
     * behind the last figure is that of all.
     *
     * @throws Refused if a degree mark stands on some of them only, or two units of length are written
     */
    static Unit unitOf(Collection<CalloutFigure> all, Unit ofDrawing) {
        List<CalloutFigure> figures = all.stream()
                .filter(figure -> !figure.isZero() || figure.unit().isPresent())
                .toList();
        List<Unit> written = figures.stream()
                .flatMap(figure -> figure.unit().stream())
                .distinct()
                .toList();
        if (written.isEmpty()) {
            return ofDrawing;
        }
        boolean angles = written.stream().allMatch(Unit::isOfAngle);
        if (angles && figures.stream().allMatch(CalloutFigure::isOfAngle)) {
            return written.stream()
                    .min(Comparator.comparing(unit -> Length.of(BigDecimal.ONE, unit)))
                    .orElseThrow();
        }
        if (written.stream().anyMatch(Unit::isOfAngle)) {
            throw new Refused("model.callout.degree-on-one");
        }
        boolean lastWithout = figures.get(figures.size() - 1).unit().isEmpty() && written.get(0) != ofDrawing;
        if (written.size() > 1 || lastWithout) {
            throw new Refused("model.callout.two-units");
        }
        return written.get(0);
    }
}
