package org.tenthwise.app.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.USE_JAVA_UTIL_LOGGING;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How the code behaves wherever it stands. */
@AnalyzeClasses(packages = "org.tenthwise", importOptions = ImportOption.DoNotIncludeTests.class)
class HabitsTest {

    @ArchTest
    static final ArchRule noFloatingPointNearALimit = noClasses()
            .that()
            .resideInAnyPackage(
                    "org.tenthwise.model.quantity",
                    "org.tenthwise.model.tolerance",
                    "org.tenthwise.model.gauge",
                    "org.tenthwise.model.plan",
                    "org.tenthwise.model.run",
                    "org.tenthwise.model.verdict",
                    "org.tenthwise.model.record",
                    "org.tenthwise.checklists..",
                    "org.tenthwise.app.session",
                    "org.tenthwise.app.store..")
            .and()
            .doNotHaveFullyQualifiedName("org.tenthwise.model.quantity.Nanometres")
            .should(new Doubles())
            .because("the one door from a sum to a size is Nanometres, which rounds; a size on its limit must pass "
                    + "today and tomorrow, and a binary fraction does not know where the limit is");

    @ArchTest
    static final ArchRule nobodyWritesToTheStandardStreams = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("org.tenthwise.app.Main")
            .should(ACCESS_STANDARD_STREAMS)
            .because("commands write where they are told to, and a screen has words of its own for trouble");

    @ArchTest
    static final ArchRule nobodyLogs = noClasses()
            .should(USE_JAVA_UTIL_LOGGING)
            .because("trouble is told to the person who can do something about it");

    @ArchTest
    static final ArchRule noStateOutsideObjects = noFields()
            .that()
            .areStatic()
            .should()
            .notBeFinal()
            .because("two runs in one process must not know of each other");

    @ArchTest
    static void theScanSawEveryModule(JavaClasses classes) {
        Stream.of(
                        "org.tenthwise.model.verdict.Judge",
                        "org.tenthwise.checklists.rules.PlanReader",
                        "org.tenthwise.app.store.sqlite.SqliteLedger")
                .forEach(name -> assertTrue(classes.contain(name), name));
        assertTrue(classes.size() > 150, () -> "only %d classes were seen".formatted(classes.size()));
    }

    /** A rule that nothing can break holds nothing: each of these must be found. */
    @ParameterizedTest
    @ValueSource(classes = {Kept.class, Given.class, Reached.class})
    void floatingPointIsFoundWhereverItHides(Class<?> guilty) {
        JavaClasses classes = new ClassFileImporter().importClasses(guilty);
        assertTrue(noClasses().should(new Doubles()).evaluate(classes).hasViolation());
    }

    private record Kept(double size) {}

    private static final class Given {
        static boolean above(Double limit) {
            return limit == null;
        }
    }

    private static final class Reached {
        static String text(java.math.BigDecimal size) {
            return String.valueOf(size.doubleValue());
        }
    }
}
