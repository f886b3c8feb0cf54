package org.tenthwise.model.verdict;

import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limit;

/**
 * What was found about a characteristic.
 *
 * @param margin how far the deciding size lies from the nearer limit; absent where nothing was measured or readings are
 *     missing
 */
public record Verdict(VerdictKind standing, Optional<Margin> margin) {

    /**
     * @param distance zero or more
     * @param limit the limit it is measured from
     * @param inside whether the size lies inside that limit; a size on the limit is inside
     */
    public record Margin(Length distance, Limit limit, boolean inside) {}

    public static Verdict plain(VerdictKind standing) {
        return new Verdict(standing, Optional.empty());
    }

    public boolean passed() {
        return standing == VerdictKind.PASS;
    }
}
