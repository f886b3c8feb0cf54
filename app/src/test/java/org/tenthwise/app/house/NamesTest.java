package org.tenthwise.app.house;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toList;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * A name means one thing in the whole house: no two classes that stand alone share one, and a class inside another does
 * not bear the name of one that stands alone, unless it is private.
 */
class NamesTest {

    @Test
    void noNameStandsForTwoThings() {
        Collection<JavaClass> house = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("org.tenthwise");
        assertTrue(house.size() > 500, "the house was not found");
        assertEquals(List.of(), doubled(house));
    }

    /** A rule that nothing can break holds nothing. */
    @Test
    void aClassInsideAnotherThatBearsTheNameOfOneThatStandsAloneIsFound() {
        assertEquals(
                List.of("LinesTest: %s, %s".formatted(LinesTest.class.getName(), Inside.LinesTest.class.getName())),
                doubled(new ClassFileImporter().importClasses(LinesTest.class, Inside.class, Inside.LinesTest.class)));
    }

    private static List<String> doubled(Collection<JavaClass> house) {
        Map<String, List<JavaClass>> named = house.stream()
                .filter(one -> !one.isAnonymousClass()
                        && !one.isLocalClass()
                        && !one.getSimpleName().equals("package-info"))
                .filter(one -> one.isTopLevelClass() || !one.getModifiers().contains(JavaModifier.PRIVATE))
                .collect(groupingBy(JavaClass::getSimpleName, TreeMap::new, toList()));
        List<String> doubled = new ArrayList<>();
        named.forEach((name, those) -> {
            if (those.size() > 1 && those.stream().anyMatch(JavaClass::isTopLevelClass)) {
                doubled.add(name + ": "
                        + those.stream().map(JavaClass::getName).sorted().collect(joining(", ")));
            }
        });
        return doubled;
    }

    /** Holds one that is named as a class which stands alone. */
    static final class Inside {
        static final class LinesTest {}
    }
}
