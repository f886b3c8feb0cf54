package org.tenthwise.app.bench;

import java.util.List;

/**
 * One thing a bench sum asks for.
 *
 * @param id key of the sum where it is given as it is; a name of its own otherwise
 * @param choices what can be chosen; empty where a figure is typed
 * @param usual chosen until another is; empty where a figure is typed
 * @param needed whether there is no answer without it
 * @param given whether it goes to the sum under its id
 */
public record FormField(String id, FieldKind kind, List<String> choices, String usual, boolean needed, boolean given) {

    /** What is typed or chosen. */
    public enum FieldKind {
        LENGTH,
        LENGTHS,
        ANGLE,
        ANGLES,
        /** Degrees Celsius. */
        TEMPERATURE,
        /** Millionths to the degree. */
        EXPANSION,
        COUNT,
        /** Threads to the inch. */
        PER_INCH,
        CHOICE;

        /** Whether several figures are typed one after another. */
        public boolean isSeveral() {
            return this == LENGTHS || this == ANGLES;
        }
    }

    public FormField {
        choices = List.copyOf(choices);
    }

    static FormField of(FieldKind kind, String id) {
        return new FormField(id, kind, List.of(), "", true, true);
    }

    static FormField length(String id) {
        return of(FieldKind.LENGTH, id);
    }

    /** The first is the usual. */
    static FormField choice(String id, String... choices) {
        return choice(id, List.of(choices));
    }

    static FormField choice(String id, List<String> choices) {
        return new FormField(id, FieldKind.CHOICE, choices, choices.get(0), true, true);
    }

    /** The same with another usual choice than the first. */
    FormField usually(String choice) {
        return new FormField(id, kind, choices, choice, needed, given);
    }

    /** The same, but may stay empty. */
    FormField optional() {
        return new FormField(id, kind, choices, usual, false, given);
    }

    /** The same, but no key of the sum: something else is made of it. */
    FormField aside() {
        return new FormField(id, kind, choices, usual, needed, false);
    }
}
