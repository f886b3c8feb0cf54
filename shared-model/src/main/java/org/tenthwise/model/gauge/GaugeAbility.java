package org.tenthwise.model.gauge;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.table.Table;

/**
 * What a kind of gauge can do.
 *
 * @param makes kinds of check, kinds of size and words of features
 * @param touchesAtTwo whether it touches a diameter at two places, and so is blind to lobes of an odd number
 * @param resolution the least step that it shows; absent where nobody said
 */
public record GaugeAbility(GaugeKind kind, List<String> makes, boolean touchesAtTwo, Optional<Written> resolution) {

    private static final String TWO = "2";

    /** Of those kinds that are known everywhere. */
    public static final List<GaugeAbility> KNOWN = Table.beside(GaugeAbility.class, "gauge-kinds.csv").rows().stream()
            .map(row -> new GaugeAbility(
                    GaugeKind.ofKey(row.get("kind")).orElseThrow(),
                    Table.several(row.get("makes")),
                    row.get("touches").equals(TWO),
                    Optional.empty()))
            .toList();

    public GaugeAbility {
        makes = List.copyOf(makes);
    }

    /** Whether it can make a reading that goes by any of these words. */
    public boolean canMake(List<String> words) {
        return words.stream().anyMatch(makes::contains);
    }
}
