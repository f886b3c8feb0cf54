package org.tenthwise.model.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.converter.ConvertWith;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;

class FeatureTest {

    /** A cutting tool goes half of the size into each of two walls, and all of it into a face. Geometry. */
    @ParameterizedTest
    @CsvSource({
        "bore,        LOWER, true,  0.05",
        "counterbore, LOWER, true,  0.05",
        "diameter,    UPPER, true,  0.05",
        "spigot,      UPPER, true,  0.05",
        "hole,        LOWER, false, 0.05",
        "pin,         UPPER, false, 0.05",
        "width,       LOWER, false, 0.05",
        "slot,        LOWER, false, 0.05",
        "groove,      LOWER, false, 0.05",
        "keyway,      LOWER, false, 0.05",
        "thickness,   UPPER, false, 0.05",
        "flats,       UPPER, false, 0.05",
        "depth,       LOWER, false, 0.1"
    })
    void metalIsLeftBeyondOneLimit(
            @ConvertWith(FeatureNamed.class) Feature feature, Limit stillCut, boolean byTheRegister, String deep) {
        assertEquals(stillCut, feature.stillCutBeyond());
        assertEquals(byTheRegister, feature.isTurned());
        assertEquals(mm(deep), feature.depthOfCut(mm("0.1")));
    }

    /** A rounded edge of a larger radius has lost more metal, a fillet of a larger radius less. */
    @ParameterizedTest
    @CsvSource({"length", "step", "chamfer", "radius"})
    void onWhichSideOfTheseMetalIsLeftNobodyCanTell(@ConvertWith(FeatureNamed.class) Feature feature) {
        assertEquals(Optional.empty(), feature.side());
        assertThrows(NoSuchElementException.class, feature::stillCutBeyond);
        assertThrows(IllegalArgumentException.class, () -> check(feature, true));
        assertEquals(Optional.empty(), check(feature, false).cutAgainBeyond());
    }

    @Test
    void aPlainOneIsAKindByItself() {
        assertEquals("bore", check(Feature.BORE, true).key());
        assertEquals("size", check(Feature.known("slot").orElseThrow(), true).key());
        assertTrue(Feature.KNOWN.containsAll(Feature.PLAIN));
        assertEquals(
                Feature.KNOWN.size(),
                Feature.KNOWN.stream().map(Feature::key).distinct().count());
    }

    /** Metal is on one side of two walls: a plan that does not say on which is no plan of them. */
    @Test
    void whatHasTwoWallsIsInsideOrOutside() {
        assertThrows(IllegalArgumentException.class, () -> new Feature("web", Feature.Form.FACES, Optional.empty()));
    }

    private static SizeCheck check(Feature feature, boolean cutAgain) {
        return new SizeCheck(
                feature,
                Limits.between(written("7.9"), written("8.1")),
                List.of(Place.named("one")),
                1,
                Combine.EACH,
                cutAgain,
                written("0"),
                new Check.Means(GaugeKind.CALIPER, Optional.empty(), Optional.empty()));
    }

    private static Written written(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }

    private static Length mm(String figure) {
        return written(figure).length();
    }
}
