package org.tenthwise.app.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.sums.SumReply;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.record.AskedFinding;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/** Whoever goes his own way with each kind of a closed family matches all of them, so that none is forgotten. */
class ClosedFamiliesTest {

    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.tenthwise");

    static List<Arguments> families() {
        return List.of(
                arguments(Check.class, Ladders.of(Check.class)),
                arguments(Finding.class, Ladders.of(Finding.class)),
                arguments(Prompt.class, Ladders.of(Prompt.class)),
                arguments(Event.class, Ladders.byInstanceof(Event.class)),
                arguments(SumReply.class, Ladders.of(SumReply.class)));
    }

    @ParameterizedTest
    @MethodSource("families")
    void nobodyOutsideItsPackageAsksOfWhichKindAMemberIs(Class<?> family, Ladders ladders) {
        noClasses()
                .that()
                .resideOutsideOfPackage(family.getPackageName())
                .should(ladders)
                .because("a ladder of instanceof goes on compiling when a kind is added, and does nothing with it; "
                        + "match does not, nor does a method every kind must have")
                .check(HOUSE);
    }

    /** A rule that nothing can break holds nothing. */
    @ParameterizedTest
    @CsvSource({"Asking, true", "Filtering, true", "Matching, false"})
    void itIsFoundWhereverItHides(String guilty, boolean found) throws ClassNotFoundException {
        assertEquals(found, isFound(Ladders.of(Finding.class), guilty));
    }

    @ParameterizedTest
    @CsvSource({"AskingOfAnEvent, true", "MatchingAnEvent, false"})
    void thatOfAnEventIsFound(String guilty, boolean found) throws ClassNotFoundException {
        assertEquals(found, isFound(Ladders.byInstanceof(Event.class), guilty));
    }

    private static boolean isFound(Ladders ladders, String guilty) throws ClassNotFoundException {
        JavaClasses classes =
                new ClassFileImporter().importClasses(Class.forName(ClosedFamiliesTest.class.getName() + "$" + guilty));
        return noClasses().should(ladders).evaluate(classes).hasViolation();
    }

    private static final class Asking {
        static String of(Object finding) {
            return finding instanceof AskedFinding answers ? answers.answers().toString() : "";
        }
    }

    private static final class Filtering {
        static Optional<Finding> of(Finding finding) {
            return Optional.of(finding).filter(AskedFinding.class::isInstance);
        }
    }

    private static final class Matching {
        static <R> R of(Finding finding, Finding.Cases<R> cases) {
            return finding.match(cases);
        }
    }

    private static final class AskingOfAnEvent {
        static boolean isNote(Event event) {
            return event instanceof StepEvent.NoteMade;
        }
    }

    private static final class MatchingAnEvent {
        static <R> R of(Event event, Event.Cases<R> cases) {
            return event.match(cases);
        }
    }
}
