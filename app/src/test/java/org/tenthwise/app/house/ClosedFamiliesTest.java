package org.tenthwise.app.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.record.AskedFinding;
import org.tenthwise.model.record.Finding;

/** Whoever goes his own way with each kind of a closed family matches all of them, so that none is forgotten. */
class ClosedFamiliesTest {

    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.tenthwise");

    static List<Class<?>> families() {
        return List.of(Check.class, Finding.class, Prompt.class);
    }

    @ParameterizedTest
    @MethodSource("families")
    void nobodyOutsideItsPackageAsksOfWhichKindAMemberIs(Class<?> family) {
        noClasses()
                .that()
                .resideOutsideOfPackage(family.getPackageName())
                .should(new Ladders(family))
                .because("a ladder of instanceof goes on compiling when a kind is added, and does nothing with it; "
                        + "match does not, nor does a method every kind must have")
                .check(HOUSE);
    }

    /** A rule that nothing can break holds nothing. */
    @ParameterizedTest
    @CsvSource({"Asking, true", "Filtering, true", "Matching, false"})
    void itIsFoundWhereverItHides(String guilty, boolean found) throws ClassNotFoundException {
        JavaClasses classes =
                new ClassFileImporter().importClasses(Class.forName(getClass().getName() + "$" + guilty));
        assertEquals(
                found,
                noClasses().should(new Ladders(Finding.class)).evaluate(classes).hasViolation());
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
}
