package org.tenthwise.app.house;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.stream.Stream;

/** Finds where a class asks of which kind of a closed family something is, by {@code instanceof} or by naming it. */
final class Ladders extends ArchCondition<JavaClass> {

    private final Class<?> family;
    private final boolean namingToo;

    private Ladders(Class<?> family, boolean namingToo) {
        super("ask of which kind of %s something is".formatted(family.getSimpleName()));
        this.family = family;
        this.namingToo = namingToo;
    }

    static Ladders of(Class<?> family) {
        return new Ladders(family, true);
    }

    /** A kind may be named, as whoever wants one alone asks for it. */
    static Ladders byInstanceof(Class<?> family) {
        return new Ladders(family, false);
    }

    @Override
    public void check(JavaClass inspected, ConditionEvents events) {
        inspected.getCodeUnits().stream()
                .flatMap(unit -> Stream.<String>concat(
                        unit.getInstanceofChecks().stream()
                                .filter(check -> isKind(check.getRawType()))
                                .map(Object::toString),
                        unit.getReferencedClassObjects().stream()
                                .filter(named -> namingToo && isKind(named.getRawType()))
                                .map(Object::toString)))
                .forEach(what -> events.add(SimpleConditionEvent.satisfied(inspected, what)));
    }

    private boolean isKind(JavaClass type) {
        return type.isAssignableTo(family) && !type.isEquivalentTo(family);
    }
}
