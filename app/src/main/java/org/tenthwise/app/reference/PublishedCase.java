package org.tenthwise.app.reference;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.sums.SumValue;

/**
 * A worked example of a source: what is given there, and what it prints.
 *
 * @param name what it is, in a few words
 * @param calc the sum that runs it
 * @param given to the sum, the unit included
 * @param published the figures or words just as printed, under the keys of the sum's results; {@code steps.1.to} is the
 *     {@code to} of the second of the {@code steps}
 * @param within how far a figure may be off, for keys whose source is looser than its last digit
 * @param why why it is; there where {@code within} is
 * @param aside why a figure printed is wrong or follows another convention, by key
 */
public record PublishedCase(
        String source,
        SourceKind standing,
        String name,
        String calc,
        Map<String, SumValue> given,
        Map<String, String> published,
        Map<String, BigDecimal> within,
        Optional<String> why,
        Map<String, String> aside) {

    public PublishedCase {
        given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
        published = Collections.unmodifiableMap(new LinkedHashMap<>(published));
        within = Map.copyOf(within);
        aside = Map.copyOf(aside);
        if (published.isEmpty()) {
            throw new IllegalArgumentException("Nothing is published");
        }
        among(published.keySet(), within.keySet(), "within");
        among(published.keySet(), aside.keySet(), "aside");
        if (within.isEmpty() == why.isPresent()) {
            throw new IllegalArgumentException("within and why go together");
        }
    }

    private static void among(Set<String> published, Set<String> keys, String what) {
        keys.stream().filter(key -> !published.contains(key)).findFirst().ifPresent(key -> {
            throw new IllegalArgumentException("%s names %s, which is not published".formatted(what, key));
        });
    }
}
