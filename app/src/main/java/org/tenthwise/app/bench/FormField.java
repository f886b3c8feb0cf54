package org.tenthwise.app.bench;

import java.util.List;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Quantity;

/**
 * One thing a form of the bench asks for.
 *
 * @param id key of the input of the sum where it is given as it is; a name of its own otherwise
 * @param several whether several figures are typed one after another
 * @param choices what can be chosen; empty where a figure is typed
 * @param usual chosen until another is; empty where a figure is typed
 * @param needed whether there is no answer without it
 * @param given whether it goes to the sum under its id
 * @param named whether it is part of a designation, which is what it is in any unit
 * @param called under which its name stands among the words, where another form asks something else under its id
 */
public record FormField(
        String id,
        Quantity quantity,
        boolean several,
        List<String> choices,
        String usual,
        boolean needed,
        boolean given,
        boolean named,
        String called) {

    public FormField {
        choices = List.copyOf(choices);
    }

    /** An input of the sum, as the sum describes it. */
    static FormField of(Input<?> input) {
        List<String> words = List.copyOf(input.choices().keySet());
        return new FormField(
                input.key(),
                input.quantity(),
                input.several(),
                words,
                words.isEmpty() ? "" : words.get(0),
                input.needed(),
                true,
                false,
                input.key());
    }

    /** Something of the form's own, of which the input is made. */
    static FormField ofTheForm(String id, Quantity quantity) {
        return new FormField(id, quantity, false, List.of(), "", true, false, false, id);
    }

    /** A choice of the form's own; the first is the usual. */
    static FormField ofTheForm(String id, String... choices) {
        return ofTheForm(id, Quantity.WORD).choosing(List.of(choices));
    }

    public boolean isChoice() {
        return !choices.isEmpty();
    }

    /** The same, to be chosen from {@code words}; the first is the usual. */
    FormField choosing(List<String> words) {
        return new FormField(id, quantity, several, words, words.get(0), true, given, named, called);
    }

    /** The same with another usual choice than the first. */
    FormField usually(String choice) {
        return new FormField(id, quantity, several, choices, choice, needed, given, named, called);
    }

    /** The same, but may stay empty. */
    FormField optional() {
        return new FormField(id, quantity, several, choices, usual, false, given, named, called);
    }

    /** The same, but may not stay empty on this form. */
    FormField must() {
        return new FormField(id, quantity, several, choices, usual, true, given, named, called);
    }

    /** The same, as part of a designation. */
    FormField ofADesignation() {
        return new FormField(id, quantity, several, choices, usual, needed, given, true, called);
    }

    /** The same, but several figures of it are typed one after another. */
    FormField oneAfterAnother() {
        return new FormField(id, quantity, true, choices, usual, needed, given, named, called);
    }

    /** The same, by a name of its own. */
    FormField called(String name) {
        return new FormField(id, quantity, several, choices, usual, needed, given, named, name);
    }
}
