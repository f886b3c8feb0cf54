package org.tenthwise.app.history;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.Finding;

/**
 * What a part came to at one characteristic: the size that was judged, and between what the sizes lie where the drawing
 * wants every place inside.
 *
 * @param judged the one nearest to a limit, or furthest out, where every place must be inside
 * @param least not above {@code judged}
 * @param greatest not below {@code judged}
 */
public record PartSize(Length judged, Length least, Length greatest) {

    /** Of what is one size. */
    public PartSize(Length one) {
        this(one, one, one);
    }

    /** Absent where nothing is judged by a size, or there is none yet. */
    static Optional<PartSize> of(Finding finding) {
        return finding.value().map(judged -> {
            List<Length> all = finding.comesTo();
            return all.stream().allMatch(size -> size.kind().equals(judged.kind())) && isAmong(judged, all)
                    ? new PartSize(judged, Length.least(all), Length.greatest(all))
                    : new PartSize(judged);
        });
    }

    private static boolean isAmong(Length judged, List<Length> all) {
        return all.contains(judged);
    }

    /** Whether the part has one size there. */
    public boolean isOne() {
        return least.equals(greatest);
    }
}
