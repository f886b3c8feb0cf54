package org.tenthwise.app.house;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaCodeUnitAccess;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Finds floating point in a class: in its fields, in what its methods take and give, and in what it calls. */
final class Doubles extends ArchCondition<JavaClass> {

    private static final Set<String> FLOATING =
            Set.of("double", "float", Double.class.getName(), Float.class.getName());

    Doubles() {
        super("use floating point");
    }

    @Override
    public void check(JavaClass inspected, ConditionEvents events) {
        inspected.getFields().stream()
                .filter(field -> isFloating(field.getRawType()))
                .forEach(field -> found(inspected, field.getDescription(), events));
        inspected.getCodeUnits().stream()
                .filter(Doubles::mentionsFloating)
                .forEach(unit -> found(inspected, unit.getDescription(), events));
        inspected.getCodeUnitCallsFromSelf().stream()
                .filter(Doubles::reachesFloating)
                .forEach(call -> found(inspected, call.getDescription(), events));
    }

    private static void found(JavaClass where, String what, ConditionEvents events) {
        events.add(SimpleConditionEvent.satisfied(where, what + " has to do with floating point"));
    }

    private static boolean mentionsFloating(JavaCodeUnit unit) {
        return isFloating(unit.getRawReturnType(), unit.getRawParameterTypes());
    }

    private static boolean reachesFloating(JavaCodeUnitAccess<? extends AccessTarget.CodeUnitAccessTarget> call) {
        return isFloating(call.getTargetOwner())
                || isFloating(
                        call.getTarget().getRawReturnType(), call.getTarget().getRawParameterTypes());
    }

    private static boolean isFloating(JavaClass first, List<JavaClass> others) {
        return Stream.concat(Stream.of(first), others.stream()).anyMatch(Doubles::isFloating);
    }

    private static boolean isFloating(JavaClass type) {
        return FLOATING.contains(type.getName());
    }
}
