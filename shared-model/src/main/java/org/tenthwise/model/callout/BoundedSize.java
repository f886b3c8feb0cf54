package org.tenthwise.model.callout;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/** A figure on a scale of its own, with the word or sign that makes it a limit. */
final class BoundedSize {

    private static final List<String> MOST = List.of("MAX", "≤");

    private BoundedSize() {}

    /**
     * @param figures as they are drawn, without unit and bound
     * @param bounds wherever one can stand
     * @throws Refused if the figures are none, or are bounded twice
     */
    static CalloutSize read(String figures, Unit unit, List<Optional<String>> bounds) {
        Tokens row = Tokens.of(figures.strip());
        CalloutSize size = new SizeReader(row, unit).read(Optional.empty());
        row.requireEnd();
        List<String> said = bounds.stream().flatMap(Optional::stream).toList();
        if (said.isEmpty()) {
            return size;
        }
        if (said.size() > 1 || size.hasLimits()) {
            throw new Refused("model.callout.two-tolerances");
        }
        return MOST.contains(said.get(0))
                ? CalloutSize.atMost(size.nominal().orElseThrow(), unit)
                : CalloutSize.atLeast(size.nominal().orElseThrow(), unit);
    }
}
