package org.tenthwise.app.sums;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

/**
 * What a sum is called, what it takes and what it comes to; whatever reads, checks, explains or shows a sum is made
 * from it.
 *
 * @param name small letters and hyphens, as the batch calls it
 * @param inputs what it takes beside the unit; of those in one list, one
 * @param outputs what it comes to, in the order in which it is read
 * @param basis the standard and clause it rests on, or <em>common practice</em>, by which of its words say it; several
 *     where that hangs on the inputs
 * @param keys of all inputs, sorted
 */
public record SumDescription(
        String name, List<List<Input<?>>> inputs, List<Output<?>> outputs, List<String> basis, Set<String> keys) {

    private static final String BASIS = "basis";

    private SumDescription(String name, List<List<Input<?>>> inputs, List<Output<?>> outputs, List<String> basis) {
        this(
                name,
                List.copyOf(inputs),
                List.copyOf(outputs),
                List.copyOf(basis),
                inputs.stream().flatMap(List::stream).map(Input::key).collect(Collectors.toCollection(TreeSet::new)));
    }

    public static SumDescription named(String name) {
        return new SumDescription(name, List.of(), List.of(), List.of(BASIS));
    }

    /** The same, taking each of {@code more} as well. */
    public SumDescription takes(Input<?>... more) {
        return with(Arrays.stream(more).map(List::<Input<?>>of).toList());
    }

    /** The same, taking one of {@code these} as well. */
    public SumDescription takesOneOf(Input<?>... these) {
        return with(List.of(List.of(these)));
    }

    private SumDescription with(List<List<Input<?>>> more) {
        return new SumDescription(
                name, Stream.concat(inputs.stream(), more.stream()).toList(), outputs, basis);
    }

    public SumDescription gives(Output<?>... more) {
        return new SumDescription(
                name,
                inputs,
                Stream.concat(outputs.stream(), Arrays.stream(more)).toList(),
                basis);
    }

    /** The same, resting on what {@code words} say, the first of them where the sum does not name another. */
    public SumDescription on(String... words) {
        return new SumDescription(name, inputs, outputs, List.of(words));
    }

    /** Begins a result of it whose lengths come out in {@code unit}. */
    public SumResult.Writing in(Unit unit) {
        return new SumResult.Writing(unit, this);
    }

    /** Each of what it may rest on. */
    public List<Message> standards() {
        return basis.stream().map(this::said).toList();
    }

    /** Its words of that name, their gaps filled in order. */
    public Message said(String which, Object... values) {
        return Message.of("sum." + name + "." + which, values);
    }

    /** What goes in, as the guide has it. */
    public Message takenIn() {
        return Message.of(
                "as-said",
                inputs.stream()
                        .map(either -> either.stream()
                                .map(Input::said)
                                .reduce((one, other) -> Message.of("guide.or", one, other))
                                .orElseThrow())
                        .toList());
    }

    /** What comes out, as the guide has it. */
    public Message givenOut() {
        return Message.of("as-said", outputs.stream().map(Output::said).toList());
    }
}
