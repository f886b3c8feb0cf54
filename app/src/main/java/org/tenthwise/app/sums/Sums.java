package org.tenthwise.app.sums;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/** All the sums there are. A question always gets a reply. */
public final class Sums {

    private static final Input<String> CALC = Input.name("calc");

    private final Map<String, Sum> byName = new LinkedHashMap<>();

    /** @throws IllegalStateException if two sums go by one name */
    public Sums(List<Sum> sums) {
        for (Sum sum : sums) {
            if (byName.put(sum.description().name(), sum) != null) {
                throw new IllegalStateException(
                        "Two sums are called " + sum.description().name());
            }
        }
    }

    /** Of each sum, in the order they were put in. */
    public List<SumDescription> descriptions() {
        return byName.values().stream().map(Sum::description).toList();
    }

    /** In the order they were put in. */
    public Set<String> names() {
        return Collections.unmodifiableSet(byName.keySet());
    }

    /** The answer, or why there is none. Nothing that is given makes this throw. */
    public SumReply ask(String name, SumInput given) {
        try {
            return sum(name, given).of(given);
        } catch (CannotAnswer e) {
            return e.problem();
        } catch (IllegalArgumentException e) {
            return e.getMessage() == null ? unforeseen(name, e) : new Problem(Optional.empty(), Explained.why(e));
        } catch (
                RuntimeException
                        e) { // whatever a formula does with figures nobody thought of, the one who asked is told
            return unforeseen(name, e);
        }
    }

    private static Problem unforeseen(String name, RuntimeException e) {
        Message why =
                e.getMessage() == null ? Message.of("as-said", e.getClass().getSimpleName()) : Explained.why(e);
        return new Problem(Optional.empty(), Message.of("found.unforeseen", name, why));
    }

    private Sum sum(String name, SumInput given) {
        Sum sum = byName.get(name);
        if (sum == null) {
            throw new CannotAnswer(
                    CALC, Message.of("given.none-of", CALC, Quoted.of(name), new TreeSet<>(byName.keySet())));
        }
        Set<String> keys = sum.description().keys();
        if (!keys.containsAll(given.values().keySet())) {
            Set<String> unknown = new TreeSet<>(given.values().keySet());
            unknown.removeAll(keys);
            throw new CannotAnswer(
                    Input.name(unknown.iterator().next()),
                    Message.of("given.unknown", name, Quoted.of(String.join(", ", unknown)), keys));
        }
        return sum;
    }
}
