package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.SizeCheck;

/** A plan can ask for every kind of check there is. */
class StepKindsTest {

    @Test
    void everyKindOfCheckIsReadByItsKey() throws ReflectiveOperationException {
        Set<String> keys = new TreeSet<>();
        for (Class<?> kind : kinds(Check.class).toList()) {
            keys.add((String) kind.getField("KEY").get(null));
            if (kind == SizeCheck.class) {
                Feature.PLAIN.stream().map(Feature::key).forEach(keys::add);
            }
        }
        assertEquals(keys, new TreeSet<>(new StepKinds().names()));
    }

    private static Stream<Class<?>> kinds(Class<?> family) {
        return family.isSealed()
                ? Arrays.stream(family.getPermittedSubclasses()).flatMap(StepKindsTest::kinds)
                : Stream.of(family);
    }
}
