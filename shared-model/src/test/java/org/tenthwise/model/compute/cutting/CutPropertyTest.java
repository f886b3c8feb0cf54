package org.tenthwise.model.compute.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;

/** What holds for every size: a bore is an outside diameter seen in a mirror. */
class CutPropertyTest {

    @Property
    void aBoreIsAnOutsideInAMirror(
            @ForAll @BigRange(min = "1", max = "500") @Scale(5) BigDecimal measured,
            @ForAll @BigRange(min = "1", max = "500") @Scale(5) BigDecimal aim) {
        NextCut outside = NextCut.of(Feature.DIAMETER, new Length(measured), new Length(aim));
        NextCut inside = NextCut.of(Feature.BORE, new Length(measured.negate()), new Length(aim.negate()));
        assertEquals(outside.stockLeft(), inside.stockLeft());
        assertEquals(outside.changeOnDiameter(), inside.changeOnDiameter().negated());
        assertEquals(outside.changeOnRadius(), inside.changeOnRadius().negated());
    }

    @Property
    void theChangeLeadsToTheAimAndTheStateMirrors(
            @ForAll @BigRange(min = "9.9", max = "10.1") @Scale(3) BigDecimal measured,
            @ForAll @BigRange(min = "9.95", max = "10") @Scale(3) BigDecimal lower,
            @ForAll @BigRange(min = "10", max = "10.05") @Scale(3) BigDecimal upper) {
        Length size = new Length(measured);
        Length aim = new Length(lower).plus(new Length(upper)).half();
        assertEquals(aim, size.plus(NextCut.of(Feature.DIAMETER, size, aim).changeOnDiameter()));
        CutState outside = CutState.of(Feature.DIAMETER, new Length(lower), new Length(upper), size);
        CutState inside =
                CutState.of(Feature.BORE, new Length(upper.negate()), new Length(lower.negate()), size.negated());
        assertEquals(outside, inside);
    }

    @Property
    void twoHalfWaysAreOneWhole(@ForAll @BigRange(min = "10.001", max = "11") @Scale(4) BigDecimal measured) {
        Length aim = new Length(BigDecimal.TEN);
        HalfWay half = HalfWay.of(Feature.DIAMETER, new Length(measured), aim);
        NextCut rest = NextCut.of(Feature.DIAMETER, half.expectedSize(), aim);
        assertEquals(half.changeOnDiameter(), rest.changeOnDiameter());
        assertEquals(half.changeOnRadius(), rest.changeOnRadius());
    }

    @Property
    void aPocketAndABossAskForTheOppositeChange(
            @ForAll @BigRange(min = "1", max = "99") @Scale(4) BigDecimal measured,
            @ForAll @BigRange(min = "1", max = "99") @Scale(4) BigDecimal target) {
        List<Length> changes = List.of(
                CutterWear.change(Feature.WIDTH, new Length(measured), new Length(target)),
                CutterWear.change(Feature.DIAMETER, new Length(measured), new Length(target)));
        assertEquals(changes.get(0), changes.get(1).negated());
    }
}
