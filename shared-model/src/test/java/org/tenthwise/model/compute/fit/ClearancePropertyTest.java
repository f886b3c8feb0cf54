package org.tenthwise.model.compute.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.tenthwise.model.quantity.Length;

/** What holds for every plug and every bore. */
class ClearancePropertyTest {

    @Property
    void boreAndPlugChangedAboutTurnTheClearanceRound(
            @ForAll @Size(min = 1, max = 5) List<@BigRange(min = "1", max = "500") @Scale(4) BigDecimal> bores,
            @ForAll @Size(min = 1, max = 5) List<@BigRange(min = "1", max = "500") @Scale(4) BigDecimal> plugs) {
        Clearance fit = Clearance.of(lengths(bores), lengths(plugs));
        Clearance mirrored = Clearance.of(lengths(plugs), lengths(bores));
        assertEquals(fit.greatest(), mirrored.least().negated());
        assertEquals(fit.least(), mirrored.greatest().negated());
    }

    private static List<Length> lengths(List<BigDecimal> millimetres) {
        return millimetres.stream().map(Length::new).toList();
    }
}
