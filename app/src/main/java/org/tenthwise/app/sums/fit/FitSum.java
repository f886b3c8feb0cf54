package org.tenthwise.app.sums.fit;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.fit.Clearance;
import org.tenthwise.model.compute.fit.SizeAtTemperature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** The play of a plug in a bore from their sizes or from a diameter and two zones, at 20 °C and as warm as they are. */
final class FitSum implements Sum {

    private static final String HOLE_ZONE = "hole_zone";
    private static final String SHAFT_ZONE = "shaft_zone";
    private static final String BORE = "bore";
    private static final String PLUG = "plug";
    private static final Set<String> BY_ZONES = Set.of(ZoneInputs.DIAMETER, HOLE_ZONE, SHAFT_ZONE);
    private static final Set<String> BY_SIZES = Set.of("bore_greatest", "bore_least", "plug_greatest", "plug_least");
    private static final Set<String> WARMTHS = Set.of("bore_temp", "bore_alpha", "plug_temp", "plug_alpha");

    @Override
    public String name() {
        return "fit";
    }

    @Override
    public Set<String> keys() {
        Set<String> keys = new TreeSet<>(BY_ZONES);
        keys.addAll(BY_SIZES);
        keys.addAll(WARMTHS);
        return keys;
    }

    @Override
    public SumResult of(SumInput given) {
        boolean byZones = BY_ZONES.stream().anyMatch(given::has);
        if (byZones && BY_SIZES.stream().anyMatch(given::has)) {
            throw new CannotAnswer(
                    "A fit is given by diameter, %s and %s, or by the sizes of bore and plug, not by both"
                            .formatted(HOLE_ZONE, SHAFT_ZONE));
        }
        return byZones ? byZones(given) : bySizes(given);
    }

    private static SumResult byZones(SumInput given) {
        Length diameter = ZoneInputs.diameter(given);
        PartSizes bore = PartSizes.of(ZoneInputs.at(given, HOLE_ZONE, diameter, true));
        PartSizes plug = PartSizes.of(ZoneInputs.at(given, SHAFT_ZONE, diameter, false));
        SumResult.Writing answer = write(given, Unit.MILLIMETRE, bore, plug);
        return plug.write(bore.write(answer, BORE), PLUG)
                .on("ISO 286-1:2010, limits of fits; zones from its Tables 1 to 5");
    }

    private static SumResult bySizes(SumInput given) {
        return write(given, given.inUnit(), PartSizes.of(given, BORE), PartSizes.of(given, PLUG))
                .on("ISO 286-1:2010, limits of fits");
    }

    private static SumResult.Writing write(SumInput given, Unit unit, PartSizes bore, PartSizes plug) {
        Clearance clearance = bore.with(plug);
        SumResult.Writing answer = SumResult.in(unit)
                .length("clearance_greatest", clearance.greatest())
                .length("clearance_least", clearance.least())
                .word("kind", clearance.kind().name().toLowerCase(Locale.ROOT));
        Optional<SizeAtTemperature> ofBore = warmth(given, BORE);
        Optional<SizeAtTemperature> ofPlug = warmth(given, PLUG);
        if (ofBore.isPresent() || ofPlug.isPresent()) {
            Clearance now = bore.at(ofBore.orElseGet(SizeAtTemperature::atReference))
                    .with(plug.at(ofPlug.orElseGet(SizeAtTemperature::atReference)));
            writeNow(answer, clearance, now);
            if (Stream.of(ofBore, ofPlug).flatMap(Optional::stream).anyMatch(SizeAtTemperature::burns)) {
                answer.note("A part this hot or this cold burns the skin: gloves for it and a clear place, and your "
                        + "local rules for fitting hot or chilled parts");
            }
        }
        return answer;
    }

    private static void writeNow(SumResult.Writing answer, Clearance clearance, Clearance now) {
        answer.length("clearance_now", now.least())
                .length("clearance_now_greatest", now.greatest())
                .length("clearance_now_least", now.least())
                .note("clearance_now is the least the play can be at the temperatures given; a part without a "
                        + "temperature counts as at 20 °C");
        if (now.least().signum() >= 0 && clearance.least().signum() < 0) {
            answer.note("The plug goes in only because of the temperatures: at 20 °C the tightest pair is squeezed, so "
                    + "this is no proof of the size");
        }
        if (now.least().signum() < 0 && clearance.least().signum() >= 0) {
            answer.note(
                    "The tightest pair has play at 20 °C but none now: it may stick; let both come to one temperature");
        }
    }

    /** A temperature and a coefficient belong together. */
    private static Optional<SizeAtTemperature> warmth(SumInput given, String part) {
        String temperature = part + "_temp";
        String coefficient = part + "_alpha";
        if (!given.has(temperature) && !given.has(coefficient)) {
            return Optional.empty();
        }
        return Optional.of(new SizeAtTemperature(given.figure(temperature), given.figure(coefficient)));
    }
}
