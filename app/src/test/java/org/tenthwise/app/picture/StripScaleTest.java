package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class StripScaleTest {

    /**
     * A range that lies on its one limit, or next to nothing beside it: a tick is never finer than one place behind the
     * last of the limit.
     */
    @ParameterizedTest
    @CsvSource({"0.0005,0.0005,in", "0.0005,0.0005000001,in", "0.005,0.005,mm", "35.000,35.000,mm", "0.02,0.0199999,mm"
    })
    void besideOneLimitNoTickIsFinerThanItsFiguresCanTellApart(String limit, String size, Unit unit) {
        SizePicture.Sized judged = new SizePicture.Sized(Length.of(size, unit), size);
        SizePicture picture = new SizePicture(
                Feature.DIAMETER,
                unit,
                Optional.empty(),
                Optional.of(new SizePicture.Sized(Length.of(limit, unit), limit)),
                Length.ZERO,
                List.of(),
                Optional.of(judged),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new SizePicture.Said("", "", "", step -> step),
                "");
        BigDecimal lastPlace = BigDecimal.ONE.scaleByPowerOfTen(-new BigDecimal(limit).scale());
        BigDecimal step = new StripScale(picture, 0, 300).step();
        assertTrue(step.compareTo(lastPlace.movePointLeft(1)) >= 0, step + " beside " + limit);
    }

    /** The window is 1.64 tolerances on 300; a line takes 8 of them, and one of 0°03′20″ nobody can count. */
    @ParameterizedTest
    @CsvSource({
        "1770,1830,° ′,5",
        "1500,2100,° ′,30",
        "600,1800,° ′,60",
        "107940,108060,° ′ ″,10",
        "214800,217200,° ′ ″,120",
        "29.5,30.5,°,0.05"
    })
    void theTicksOfAnAngleAreMinutesAndSecondsAsTheyAreCounted(
            BigDecimal lower, BigDecimal upper, Unit unit, BigDecimal step) {
        SizePicture picture = new SizePicture(
                Feature.DIAMETER,
                unit,
                Optional.of(sized(lower, unit)),
                Optional.of(sized(upper, unit)),
                Length.ZERO,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new SizePicture.Said("", "", "", any -> any),
                "");
        assertEquals(step, new StripScale(picture, 0, 300).step());
    }

    private static SizePicture.Sized sized(BigDecimal figure, Unit unit) {
        return new SizePicture.Sized(Length.of(figure, unit), unit.text(figure));
    }
}
