package org.tenthwise.app.sums.fit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.fit.Clearance;
import org.tenthwise.model.compute.fit.FitKind;
import org.tenthwise.model.compute.fit.SizeAtTemperature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

/** The play of a plug in a bore from their sizes or from a diameter and two zones, at 20 °C and as warm as they are. */
public final class FitSum implements Sum {

    public static final String NAME = "fit";
    public static final Input<BigDecimal> DIAMETER =
            Input.positive("diameter").in(Quantity.LENGTH).optional();
    public static final Input<String> HOLE_ZONE = Input.name("hole_zone").optional();
    public static final Input<String> SHAFT_ZONE = Input.name("shaft_zone").optional();
    public static final Input<Length> BORE_GREATEST =
            Input.positiveLength("bore_greatest").optional();
    public static final Input<Length> BORE_LEAST =
            Input.positiveLength("bore_least").optional();
    public static final Input<Length> PLUG_GREATEST =
            Input.positiveLength("plug_greatest").optional();
    public static final Input<Length> PLUG_LEAST =
            Input.positiveLength("plug_least").optional();
    public static final Input<BigDecimal> BORE_TEMP =
            Input.figure("bore_temp").in(Quantity.TEMPERATURE).optional();
    public static final Input<BigDecimal> BORE_ALPHA =
            Input.figure("bore_alpha").in(Quantity.EXPANSION).optional();
    public static final Input<BigDecimal> PLUG_TEMP =
            Input.figure("plug_temp").in(Quantity.TEMPERATURE).optional();
    public static final Input<BigDecimal> PLUG_ALPHA =
            Input.figure("plug_alpha").in(Quantity.EXPANSION).optional();
    public static final Output<Length> CLEARANCE_GREATEST =
            Output.length("clearance_greatest").withSign();
    public static final Output<Length> CLEARANCE_LEAST =
            Output.length("clearance_least").withSign();
    public static final Output<FitKind> KIND = Output.word("kind", FitKind.values());
    public static final Output<Length> CLEARANCE_NOW =
            Output.length("clearance_now").withSign().sometimes();
    public static final Output<Length> CLEARANCE_NOW_GREATEST =
            Output.length("clearance_now_greatest").withSign().sometimes();
    public static final Output<Length> CLEARANCE_NOW_LEAST =
            Output.length("clearance_now_least").withSign().sometimes();
    public static final Output<Length> BORE_GREATEST_FOUND =
            Output.length("bore_greatest").sometimes();
    public static final Output<Length> BORE_LEAST_FOUND =
            Output.length("bore_least").sometimes();
    public static final Output<Length> PLUG_GREATEST_FOUND =
            Output.length("plug_greatest").sometimes();
    public static final Output<Length> PLUG_LEAST_FOUND =
            Output.length("plug_least").sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(DIAMETER, HOLE_ZONE, SHAFT_ZONE, BORE_GREATEST, BORE_LEAST, PLUG_GREATEST, PLUG_LEAST)
            .takes(BORE_TEMP, BORE_ALPHA, PLUG_TEMP, PLUG_ALPHA)
            .gives(
                    CLEARANCE_GREATEST,
                    CLEARANCE_LEAST,
                    KIND,
                    CLEARANCE_NOW,
                    CLEARANCE_NOW_GREATEST,
                    CLEARANCE_NOW_LEAST,
                    BORE_GREATEST_FOUND,
                    BORE_LEAST_FOUND,
                    PLUG_GREATEST_FOUND,
                    PLUG_LEAST_FOUND)
            .on("sizes", "zones");

    private static final List<Input<?>> BY_ZONES = List.of(DIAMETER, HOLE_ZONE, SHAFT_ZONE);
    private static final List<Input<?>> BY_SIZES = List.of(BORE_GREATEST, BORE_LEAST, PLUG_GREATEST, PLUG_LEAST);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        boolean byZones = BY_ZONES.stream().anyMatch(given::has);
        if (byZones && BY_SIZES.stream().anyMatch(given::has)) {
            throw new CannotAnswer(Message.of("given.fit-by-both"));
        }
        return byZones ? byZones(given) : bySizes(given);
    }

    private static SumResult byZones(SumInput given) {
        Length diameter = ZoneInputs.diameter(given);
        PartSizes bore = PartSizes.of(ZoneInputs.at(given, HOLE_ZONE, diameter, true));
        PartSizes plug = PartSizes.of(ZoneInputs.at(given, SHAFT_ZONE, diameter, false));
        SumResult.Writing answer = write(given, Unit.MILLIMETRE, bore, plug);
        bore.write(answer, BORE_GREATEST_FOUND, BORE_LEAST_FOUND);
        return plug.write(answer, PLUG_GREATEST_FOUND, PLUG_LEAST_FOUND).on("zones");
    }

    private static SumResult bySizes(SumInput given) {
        Unit unit = given.inUnit();
        PartSizes bore = PartSizes.of(given, BORE_GREATEST, BORE_LEAST);
        return write(given, unit, bore, PartSizes.of(given, PLUG_GREATEST, PLUG_LEAST))
                .done();
    }

    private static SumResult.Writing write(SumInput given, Unit unit, PartSizes bore, PartSizes plug) {
        Clearance clearance = bore.with(plug);
        SumResult.Writing answer = DESCRIPTION
                .in(unit)
                .put(CLEARANCE_GREATEST, clearance.greatest())
                .put(CLEARANCE_LEAST, clearance.least())
                .put(KIND, clearance.kind());
        Optional<SizeAtTemperature> ofBore = warmth(given, BORE_TEMP, BORE_ALPHA);
        Optional<SizeAtTemperature> ofPlug = warmth(given, PLUG_TEMP, PLUG_ALPHA);
        if (ofBore.isPresent() || ofPlug.isPresent()) {
            Clearance now = bore.at(ofBore.orElseGet(SizeAtTemperature::atReference))
                    .with(plug.at(ofPlug.orElseGet(SizeAtTemperature::atReference)));
            writeNow(answer, clearance, now);
            if (Stream.of(ofBore, ofPlug).flatMap(Optional::stream).anyMatch(SizeAtTemperature::burns)) {
                answer.note("burns");
            }
        }
        return answer;
    }

    private static void writeNow(SumResult.Writing answer, Clearance clearance, Clearance now) {
        answer.put(CLEARANCE_NOW, now.least())
                .put(CLEARANCE_NOW_GREATEST, now.greatest())
                .put(CLEARANCE_NOW_LEAST, now.least())
                .note("now");
        if (now.least().signum() >= 0 && clearance.least().signum() < 0) {
            answer.note("only-warm");
        }
        if (now.least().signum() < 0 && clearance.least().signum() >= 0) {
            answer.note("not-now");
        }
    }

    /** A temperature and a coefficient belong together. */
    private static Optional<SizeAtTemperature> warmth(
            SumInput given, Input<BigDecimal> temperature, Input<BigDecimal> coefficient) {
        if (!given.has(temperature) && !given.has(coefficient)) {
            return Optional.empty();
        }
        return Optional.of(new SizeAtTemperature(given.get(temperature), given.get(coefficient)));
    }
}
