package org.tenthwise.app.sums;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

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
            return e.getMessage() == null ? unforeseen(name, e) : new CannotAnswer(e.getMessage()).problem();
        } catch (
                RuntimeException
                        e) { // whatever a formula does with figures nobody thought of, the one who asked is told
            return unforeseen(name, e);
        }
    }

    private static Problem unforeseen(String name, RuntimeException e) {
        String why = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
        return new CannotAnswer("The sum %s does not come out with the figures given: %s".formatted(name, why))
                .problem();
    }

    private Sum sum(String name, SumInput given) {
        Sum sum = byName.get(name);
        if (sum == null) {
            throw new CannotAnswer(
                    CALC,
                    "calc is \"%s\": it is one of %s"
                            .formatted(Quoted.of(name), String.join(", ", new TreeSet<>(byName.keySet()))));
        }
        Set<String> keys = sum.description().keys();
        if (!keys.containsAll(given.values().keySet())) {
            Set<String> unknown = new TreeSet<>(given.values().keySet());
            unknown.removeAll(keys);
            throw new CannotAnswer(
                    Input.name(unknown.iterator().next()),
                    "%s takes no %s: it takes %s"
                            .formatted(name, Quoted.of(String.join(", ", unknown)), String.join(", ", keys)));
        }
        return sum;
    }
}
