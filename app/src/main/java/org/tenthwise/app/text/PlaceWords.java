package org.tenthwise.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.tenthwise.app.series.CapabilityShown;
import org.tenthwise.app.series.PartPoint;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.app.series.TolerancePlace;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Words;

/**
 * Where a size lies in its tolerance: in per cent of the way to the limit it is nearer to, and outside by how far it is
 * out, for a per cent says nothing there. What lies inside never reads as if it lay on the limit.
 */
public final class PlaceWords {

    private static final int AS_PERCENT = 2;
    private static final int FINER = 2;
    private static final BigDecimal ON_THE_LIMIT = BigDecimal.valueOf(100);
    private static final BigDecimal NEXT_TO_IT = BigDecimal.valueOf(99);

    private final Words words;

    public PlaceWords(Words words) {
        this.words = words;
    }

    /** The limit a size goes to. */
    private enum Towards {
        LOWER,
        UPPER,
        /** The only one there is. */
        ONE
    }

    /** Of a part that has such a place. */
    public String of(PartPoint point, SizeOf which, TolerancePlace place) {
        Length size = point.size(which).judged();
        boolean up = place.percent().signum() >= 0;
        Towards towards =
                switch (place.scale()) {
                    case BETWEEN_LIMITS -> up ? Towards.UPPER : Towards.LOWER;
                    case OF_ONE_LIMIT -> Towards.ONE;
                };
        Limits limits = point.limits();
        Length limit = (up ? limits.upper() : limits.lower().or(limits::upper))
                .map(Written::length)
                .orElseThrow();
        Length beyond = up ? size.minus(limit) : limit.minus(size);
        return said(towards, place.percent().abs(), beyond, point.unit(), point.places());
    }

    /** Of the part nearest to a limit, or furthest beyond it. */
    public String of(CapabilityShown.Furthest furthest, Unit unit, int places) {
        return said(
                furthest.upper() ? Towards.UPPER : Towards.LOWER,
                furthest.used().movePointRight(AS_PERCENT),
                Length.of(furthest.beyond(), unit),
                unit,
                places);
    }

    /** How far a size lies outside, with its sign; {@code beyond} is above zero. */
    public String out(Length beyond, Unit unit, int places) {
        return words.say("history.place.out", distance(beyond, unit, places));
    }

    /** As many places as the size has, and two more where a limit is written finer. */
    private static String distance(Length beyond, Unit unit, int places) {
        int exact = beyond.in(unit).stripTrailingZeros().scale();
        return Figures.withUnit(Figures.plain(beyond, unit, Math.max(places, Math.min(exact, places + FINER))), unit);
    }

    private String said(Towards towards, BigDecimal percent, Length beyond, Unit unit, int places) {
        int side = percent.compareTo(ON_THE_LIMIT);
        if (side > 0) {
            return words.say(words.key("history.place.beyond", towards), distance(beyond, unit, places));
        }
        if (side == 0) {
            return words.say(words.key("history.place.on", towards));
        }
        BigDecimal whole = percent.setScale(0, RoundingMode.HALF_EVEN).min(NEXT_TO_IT);
        return whole.signum() == 0 && towards != Towards.ONE
                ? words.say("history.place.middle")
                : words.say(words.key("history.place.way", towards), Figures.number(whole));
    }
}
