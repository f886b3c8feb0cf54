package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.zone.ToleranceZone;
import org.tenthwise.model.compute.zone.ZoneLimits;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.tolerance.Origin;
import org.tenthwise.model.words.Message;

/** Limits by a nominal size and a zone of ISO 286, in place of limits written out. */
final class ZoneRules {

    private static final String ZONE = "zone";
    private static final String NOMINAL = "nominal";
    private static final Message STANDARD = Message.of("as-said", "ISO 286-2");
    /** The standard has micrometres, and half ones here and there. */
    private static final int LEAST_PLACES = 3;

    private ZoneRules() {}

    static boolean given(TableKeys keys) {
        return keys.has(ZONE) || keys.has(NOMINAL);
    }

    static Optional<Limits> read(TableKeys keys, Unit unit, Feature feature) {
        List.of("lower", "upper")
                .forEach(key -> keys.ifAny(key, there -> {
                    keys.problem(there, "plan.zone.both-limits", there);
                    return Optional.empty();
                }));
        Optional<Written> nominal = keys.size(NOMINAL, unit);
        Optional<ToleranceZone> zone =
                keys.text(ZONE).flatMap(name -> keys.sensible(ZONE, () -> ToleranceZone.read(name)));
        zone.ifPresent(read -> judge(keys, unit, feature, read));
        return zone.filter(read -> unit == Unit.MILLIMETRE)
                .flatMap(read -> nominal.flatMap(size -> keys.sensible(ZONE, () -> limits(feature, size, read))));
    }

    private static void judge(TableKeys keys, Unit unit, Feature feature, ToleranceZone zone) {
        if (unit != Unit.MILLIMETRE) {
            keys.problem(ZONE, "plan.zone.inches");
        }
        if (feature.form().hasTwoSides() && zone.isHole() != feature.isInside()) {
            keys.problem(ZONE, zone.isHole() ? "plan.zone.of-a-hole" : "plan.zone.of-a-shaft", zone, feature.key());
        }
    }

    private static Limits limits(Feature feature, Written nominal, ToleranceZone zone) {
        ZoneLimits found = zone.of(nominal.length());
        String sign = feature.isRound() ? "Ø" : "";
        return new Limits(
                Optional.of(written(found.least(), nominal)),
                Optional.of(written(found.greatest(), nominal)),
                Optional.of(new Origin("%s%s %s".formatted(sign, nominal.text(), zone), STANDARD)));
    }

    private static Written written(Length limit, Written nominal) {
        BigDecimal figure = limit.in(Unit.MILLIMETRE);
        int places = Math.max(figure.scale(), Math.max(nominal.places(), LEAST_PLACES));
        return Written.of(figure.setScale(places), Unit.MILLIMETRE);
    }
}
