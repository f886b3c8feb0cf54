package org.tenthwise.app.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/** Whoever goes his own way with each kind of event matches all of them; who wants one kind alone asks for it. */
class EventsTest {

    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.tenthwise");

    private static final ArchCondition<JavaClass> ASK_BY_INSTANCEOF =
            new ArchCondition<>("ask by instanceof of which kind an event is") {
                @Override
                public void check(JavaClass inspected, ConditionEvents found) {
                    inspected.getInstanceofChecks().stream()
                            .filter(asked -> asked.getRawType().isAssignableTo(Event.class))
                            .forEach(asked -> found.add(SimpleConditionEvent.satisfied(inspected, asked.toString())));
                }
            };

    @Test
    void nobodyOutsideItsPackageAsksByInstanceofOfWhichKindAnEventIs() {
        noClasses()
                .that()
                .resideOutsideOfPackage(Event.class.getPackageName())
                .should(ASK_BY_INSTANCEOF)
                .because("a ladder goes on compiling when a kind is added, and does nothing with it")
                .check(HOUSE);
    }

    /** A rule that nothing can break holds nothing. */
    @Test
    void oneThatDoesIsFound() {
        noClasses().should(ASK_BY_INSTANCEOF).check(new ClassFileImporter().importClasses(Matching.class));
        assertThrows(
                AssertionError.class,
                () -> noClasses().should(ASK_BY_INSTANCEOF).check(new ClassFileImporter().importClasses(Asking.class)));
    }

    private static final class Asking {
        static boolean isNote(Event event) {
            return event instanceof StepEvent.NoteMade;
        }
    }

    private static final class Matching {
        static <R> R of(Event event, Event.Cases<R> cases) {
            return event.match(cases);
        }
    }
}
