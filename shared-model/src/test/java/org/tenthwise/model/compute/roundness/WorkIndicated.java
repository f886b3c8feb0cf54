package org.tenthwise.model.compute.roundness;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** Work read at four places, swept or not, in one section or two, and the moves told of it. */
final class WorkIndicated {

    static final Length LIMIT = mm("0.020");
    static final List<BigDecimal> FOUR =
            List.of("0", "90", "180", "270").stream().map(BigDecimal::new).toList();

    static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    /** Readings at 0, 90, 180 and 270; swept over the turn where a fifth figure stands. */
    static Indicated indicated(String readings) {
        List<Length> read =
                Arrays.stream(readings.split(";")).map(WorkIndicated::mm).toList();
        List<Length> points = read.subList(0, 4);
        return new Indicated(
                FullIndicatorMovement.of(points),
                CircleFit.of(FOUR, points),
                read.stream().skip(4).findFirst(),
                mm("0.002"));
    }

    static TruingUp one(Holding holding, String readings) {
        return TruingUp.of(holding, BigDecimal.ZERO, LIMIT, mm("0.001"), indicated(readings), Optional.empty());
    }

    static TruingUp two(Holding holding, String near, String far) {
        return TruingUp.of(holding, BigDecimal.ZERO, LIMIT, mm("0.001"), indicated(near), Optional.of(indicated(far)));
    }

    static Move.Jaw jaw(int loosen, int tighten, String fall) {
        return new Move.Jaw(loosen, tighten, mm(fall));
    }

    static Move.Tap tap(String cosPart, String sinPart) {
        return new Move.Tap(new Eccentricity(mm(cosPart), mm(sinPart)));
    }

    private WorkIndicated() {}
}
