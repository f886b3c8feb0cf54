package org.tenthwise.model.compute.roughness;

import java.util.Arrays;
import java.util.List;
import org.tenthwise.model.words.Refused;

/** The standard a drawing rests on for the roughness of its surfaces; its date tells which. */
public enum RoughnessEdition {
    ISO_4288("ISO 4288:1996", "4288", "1996"),
    ISO_21920("ISO 21920-3:2021", "21920", "2021");

    private final String title;
    private final List<String> numbers;

    RoughnessEdition(String title, String... numbers) {
        this.title = title;
        this.numbers = List.of(numbers);
    }

    /** Number, part and year. */
    public String title() {
        return title;
    }

    /**
     * Those that {@code text} names by number or year; more than one where it names both.
     *
     * @throws IllegalArgumentException if it names none
     */
    public static List<RoughnessEdition> named(String text) {
        List<RoughnessEdition> named = Arrays.stream(values())
                .filter(edition -> edition.numbers.stream().anyMatch(text::contains))
                .toList();
        if (named.isEmpty()) {
            throw new Refused("model.roughness.edition", ISO_4288.title, ISO_21920.title);
        }
        return named;
    }
}
