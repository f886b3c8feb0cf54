package org.tenthwise.model.worked;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.taper.SineBar;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/**
 * An angle by the stack of blocks under a sine bar on which the work lies level.
 *
 * @param bar from roller to roller, by its certificate
 */
public record OnSineBar(Written bar) implements WorkedBy {

    private static final BigDecimal UPRIGHT = BigDecimal.valueOf(90);

    @Override
    public WorkedWay way() {
        return WorkedWay.SINE_BAR;
    }

    @Override
    public List<WorkedReading> readings() {
        return List.of(WorkedReading.STACK);
    }

    @Override
    public List<Given> given() {
        return List.of(Given.of(KnownSize.BAR, bar));
    }

    @Override
    public QuantityKind gives() {
        return QuantityKind.ANGLE;
    }

    @Override
    public Length of(List<Length> readings) {
        return WorkedBy.angle(new SineBar(bar.length()).angle(readings.get(0)));
    }

    @Override
    public Optional<Length> reading(Length size) {
        return Optional.of(size.in(Unit.DEGREE))
                .filter(degrees -> degrees.signum() >= 0 && degrees.compareTo(UPRIGHT) <= 0)
                .map(new SineBar(bar.length())::stack);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.sineBar(this);
    }
}
