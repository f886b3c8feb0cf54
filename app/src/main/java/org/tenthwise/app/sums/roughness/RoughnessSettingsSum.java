package org.tenthwise.app.sums.roughness;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.roughness.RoughnessEdition;
import org.tenthwise.model.compute.roughness.RoughnessParameter;
import org.tenthwise.model.compute.roughness.RoughnessSettings;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** What a roughness instrument is set to for a limit of the drawing. */
public final class RoughnessSettingsSum implements Sum {

    public static final String NAME = "roughness-settings";
    public static final Input<RoughnessParameter> PARAMETER = Input.choice("parameter", parameters());
    public static final Input<BigDecimal> LIMIT = Input.positive("limit").bounded("in-micrometres");
    public static final Input<List<RoughnessEdition>> EDITION =
            Input.name("edition").as(RoughnessEdition::named).bounded("bound");
    public static final Output<Length> CUTOFF = Output.length("cutoff");
    public static final Output<Length> EVALUATION_LENGTH = Output.length("evaluation_length");
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(PARAMETER, LIMIT, EDITION)
            .gives(CUTOFF, EVALUATION_LENGTH)
            .on("iso-21920", "iso-4288");

    private static Map<String, RoughnessParameter> parameters() {
        Map<String, RoughnessParameter> bySymbol = new LinkedHashMap<>();
        for (RoughnessParameter known : RoughnessParameter.values()) {
            bySymbol.put(known.symbol(), known);
        }
        return bySymbol;
    }

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        given.refuse(Unit.INCH, "roughness");
        RoughnessParameter parameter = given.get(PARAMETER);
        BigDecimal limit = given.get(LIMIT);
        List<RoughnessEdition> named = given.get(EDITION);
        RoughnessEdition edition = named.get(0);
        RoughnessSettings settings = given.about(LIMIT, () -> RoughnessSettings.of(edition, parameter, limit));
        SumResult.Writing answer = DESCRIPTION
                .in(Unit.MILLIMETRE)
                .put(CUTOFF, settings.cutoff())
                .put(EVALUATION_LENGTH, settings.evaluationLength());
        Optional<RoughnessEdition> otherwise = Arrays.stream(RoughnessEdition.values())
                .filter(other ->
                        !RoughnessSettings.find(other, parameter, limit).equals(Optional.of(settings)))
                .findFirst();
        if (otherwise.filter(named::contains).isPresent()) {
            throw new CannotAnswer(EDITION, "two", given.text(EDITION));
        }
        otherwise.ifPresent(other -> RoughnessSettings.find(other, parameter, limit)
                .ifPresentOrElse(
                        there -> answer.note(
                                "other-edition", other.title(), there.cutoff().in(Unit.MILLIMETRE)),
                        () -> answer.note("other-has-none", other.title())));
        if (edition == RoughnessEdition.ISO_4288) {
            answer.note("turned");
            if (parameter == RoughnessParameter.RZ) {
                answer.note("from-memory");
            }
        }
        return answer.on(edition == RoughnessEdition.ISO_4288 ? "iso-4288" : "iso-21920");
    }
}
