package org.tenthwise.model.compute.uncertainty;

import java.util.List;
import java.util.OptionalDouble;
import org.tenthwise.model.words.Refused;

/**
 * The sources of uncertainty of one result, put together.
 *
 * <p>Standard uncertainty u = √Σ uᵢ². Effective degrees of freedom = u⁴ / Σ (uᵢ⁴ / νᵢ), over the sources whose degrees
 * of freedom ν are known. Expanded = coverage factor · u, with the factor of {@link Coverage}.
 *
 * <p>In the unit of the components; zero or more.
 *
 * <p>One component gives itself. Components of zero give zero and need no factor but two. The effective degrees of
 * freedom are absent where no component has any.
 *
 * <p>Source: JCGM 100:2008 (GUM), 5.1.2 for sources that do not depend on one another, and G.4.1 (Welch and
 * Satterthwaite).
 */
public record Budget(double standard, OptionalDouble effectiveDegreesOfFreedom, Coverage coverage) {

    /** @throws IllegalArgumentException if there is nothing to put together */
    public static Budget of(List<Component> components) {
        if (components.isEmpty()) {
            throw new Refused("model.budget.uncertainty-needs");
        }
        double standard = Math.sqrt(components.stream()
                .mapToDouble(component -> square(component.standard()))
                .sum());
        OptionalDouble effective = effective(components, standard);
        return new Budget(standard, effective, Coverage.of(components, standard, effective));
    }

    public double expanded() {
        return expandedBy(coverage.factor());
    }

    /** @param factor agreed beforehand, whatever {@link #coverage()} would choose */
    public double expandedBy(double factor) {
        return factor * standard;
    }

    /** Shares of the whole are raised, not the figures themselves, so that small units do not vanish. */
    private static OptionalDouble effective(List<Component> components, double standard) {
        double known = components.stream()
                .filter(component -> component.degreesOfFreedom().isPresent() && component.standard() > 0)
                .mapToDouble(component -> square(square(component.standard() / standard))
                        / component.degreesOfFreedom().getAsInt())
                .sum();
        return known > 0 ? OptionalDouble.of(1 / known) : OptionalDouble.empty();
    }

    private static double square(double figure) {
        return figure * figure;
    }
}
