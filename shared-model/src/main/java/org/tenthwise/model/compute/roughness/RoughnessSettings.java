package org.tenthwise.model.compute.roughness;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.table.Table;
import org.tenthwise.model.words.Refused;

/**
 * What a roughness instrument is set to where the drawing says nothing else: the cut-off, and the length it evaluates.
 *
 * <p>No formula: a table of the standard by parameter and limit. The evaluation length is five sampling lengths, each
 * as long as the cut-off.
 *
 * <p>Unit: limits in µm; the settings are lengths, exact.
 *
 * <p>A limit on the edge of a band belongs to the band below. Rz has other bands in either edition: what is judged with
 * the settings of the other one is another figure. On a turned surface the older edition goes by the spacing of the
 * grooves, not by the limit.
 *
 * <p>Source: ISO 21920-3:2021 as a Swedish table of settings has it, whose symbols are those of that standard though it
 * does not name it. ISO 4288:1996 as D. J. Whitehouse, <em>Surfaces and their Measurement</em> (2002), chapter 3, has
 * it; its bands of Rz over 0.5 µm from memory.
 */
public record RoughnessSettings(Length cutoff, Length evaluationLength) {

    private static final List<Map<String, String>> BANDS =
            Table.beside(RoughnessSettings.class, "roughness-settings.csv").rows();

    /**
     * @param limit of the drawing, in µm, more than zero
     * @throws IllegalArgumentException if the standard has no band for it
     */
    public static RoughnessSettings of(RoughnessEdition edition, RoughnessParameter parameter, BigDecimal limit) {
        return find(edition, parameter, limit)
                .orElseThrow(() -> new Refused(
                        "model.roughness.no-band", edition.title(), parameter.symbol(), limit.toPlainString()));
    }

    /** The same; absent where the standard has no band for the limit. */
    public static Optional<RoughnessSettings> find(
            RoughnessEdition edition, RoughnessParameter parameter, BigDecimal limit) {
        return BANDS.stream()
                .filter(band -> band.get("edition").equals(edition.name()))
                .filter(band -> band.get("parameter").equals(parameter.symbol()))
                .filter(band -> edge(band, "over")
                        .filter(over -> limit.compareTo(over) <= 0)
                        .isEmpty())
                .filter(band -> edge(band, "up-to")
                        .filter(most -> limit.compareTo(most) > 0)
                        .isEmpty())
                .map(band -> new RoughnessSettings(length(band, "cutoff"), length(band, "evaluation")))
                .findFirst();
    }

    private static Optional<BigDecimal> edge(Map<String, String> band, String heading) {
        return Optional.of(band.get(heading))
                .filter(cell -> !cell.equals(Table.NOTHING))
                .map(BigDecimal::new);
    }

    private static Length length(Map<String, String> band, String heading) {
        return Length.of(band.get(heading), Unit.MILLIMETRE);
    }
}
