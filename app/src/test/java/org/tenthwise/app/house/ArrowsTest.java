package org.tenthwise.app.house;

import static com.tngtech.archunit.base.DescribedPredicate.alwaysTrue;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Timer;
import java.util.concurrent.Executor;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.ui.form.StepForm;

/** Which package may know which. */
@AnalyzeClasses(packages = "org.tenthwise", importOptions = ImportOption.DoNotIncludeTests.class)
class ArrowsTest {

    private static final String MODEL = "org.tenthwise.model..";
    private static final String CHECKLISTS = "org.tenthwise.checklists..";
    private static final String APP = "org.tenthwise.app..";
    private static final String DISTRIBUTIONS = "org.apache.commons.statistics.distribution..";

    @ArchTest
    static final ArchRule theModelKnowsNothingAboveIt = noClasses()
            .that()
            .resideInAPackage(MODEL)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(CHECKLISTS, APP)
            .because("sums and verdicts must read and test without plan files and without screens");

    @ArchTest
    static final ArchRule checklistsDoNotKnowTheApp = noClasses()
            .that()
            .resideInAPackage(CHECKLISTS)
            .should()
            .dependOnClassesThat()
            .resideInAPackage(APP)
            .because("a plan is judged the same on a tablet, on a desk and in a test");

    @ArchTest
    static final ArchRule theModelNeedsNothingButJava = noClasses()
            .that()
            .resideInAPackage(MODEL)
            .and()
            .doNotHaveFullyQualifiedName("org.tenthwise.model.table.Table")
            .and()
            .resideOutsideOfPackage("org.tenthwise.model.words")
            .should()
            .dependOnClassesThat()
            .resideOutsideOfPackages(MODEL, "java.lang..", "java.math..", "java.time..", "java.util..", DISTRIBUTIONS)
            .because("what a verdict rests on is ours to the last line, and opens no file, no screen and no "
                    + "database; the tables of standards and the words it ships with have one reader each");

    @ArchTest
    static final ArchRule onlySumsKnowTheDistributions = noClasses()
            .that()
            .resideOutsideOfPackage("org.tenthwise.model.compute..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage(DISTRIBUTIONS)
            .because("one class a formula, and what asks for the formula need not know how its distribution is "
                    + "worked out");

    @ArchTest
    static final ArchRule noScreenAndNoDatabaseBelowTheApp = noClasses()
            .that()
            .resideInAnyPackage(MODEL, CHECKLISTS)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..", "java.sql..", "javax.sql..", "org.sqlite..", "java.awt..", "javax.swing..")
            .because("the lower modules serve any screen and any store");

    @ArchTest
    static final ArchRule noPackagesGoRoundInCircles = slices().matching("org.tenthwise.(**)")
            .should()
            .beFreeOfCycles()
            .because("data walks one way, and a package that needs its own user is in two places at once");

    @ArchTest
    static final ArchRule sqlStaysInItsPackage = noClasses()
            .that()
            .resideOutsideOfPackage("org.tenthwise.app.store.sqlite")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.sql..", "javax.sql..", "org.sqlite..")
            .because("everything else sees entries, and the store can be another one tomorrow");

    @ArchTest
    static final ArchRule whatWorksWithoutAScreenKnowsNone = noClasses()
            .that()
            .resideInAnyPackage(
                    "org.tenthwise.app.picture..",
                    "org.tenthwise.app.session..",
                    "org.tenthwise.app.backup..",
                    "org.tenthwise.app.store..",
                    "org.tenthwise.app.export..",
                    "org.tenthwise.app.text..",
                    "org.tenthwise.app.story..",
                    "org.tenthwise.app.handout..",
                    "org.tenthwise.app.command..",
                    "org.tenthwise.app.sums..",
                    "org.tenthwise.app.bench..",
                    "org.tenthwise.app.reference..",
                    "org.tenthwise.app.batch..",
                    "org.tenthwise.app.history..",
                    "org.tenthwise.app.series..",
                    "org.tenthwise.app.matters..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..", "org.tenthwise.app.ui..")
            .because("a run can be walked, judged, drawn and recorded where there is no display");

    @ArchTest
    static final ArchRule viewModelsKnowNoControl = noClasses()
            .that()
            .haveSimpleNameEndingWith("ViewModel")
            .or()
            .areAssignableTo(StepForm.class)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx.scene..", "javafx.stage..", "javafx.fxml..", "javafx.application..")
            .because("a view model is tested without a screen");

    @ArchTest
    static final ArchRule viewModelsHoldNoThread = noClasses()
            .that()
            .haveSimpleNameEndingWith("ViewModel")
            .or()
            .areAssignableTo(StepForm.class)
            .should()
            .dependOnClassesThat(assignableTo(Thread.class)
                    .or(assignableTo(Executor.class))
                    .or(assignableTo(Timer.class))
                    .or(assignableTo(Background.class))
                    .or(resideInAnyPackage("javafx.concurrent..", "javafx.animation..")))
            .because("work away from the screen is asked of LedgerTasks, and a test does it at once");

    @ArchTest
    static final ArchRule screensDoNotKnowEachOther = slices().matching("org.tenthwise.app.ui.(*)..")
            .should()
            .notDependOnEachOther()
            .ignoreDependency(
                    alwaysTrue(),
                    resideInAnyPackage(
                            "org.tenthwise.app.ui.form..",
                            "org.tenthwise.app.ui.keys..",
                            "org.tenthwise.app.ui.picture..",
                            "org.tenthwise.app.ui.shell..",
                            "org.tenthwise.app.ui.theme..",
                            "org.tenthwise.app.ui.workplace.."))
            .because("a screen asks the navigator to go elsewhere, and what two screens share is a part of its own");

    @ArchTest
    static final ArchRule screensDoNotKnowWhereEntriesLie = noClasses()
            .that()
            .resideInAPackage("org.tenthwise.app.ui..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("org.tenthwise.app.store.sqlite..", "org.tenthwise.app.command.."))
            .because("a screen asks the session, which asks whatever ledger it was given");

    @ArchTest
    static final ArchRule onlyTheDeviceIsAskedThroughAttach = noClasses()
            .that()
            .resideOutsideOfPackage("org.tenthwise.app.device..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.gluonhq..")
            .because("the same client runs where the device services do not");
}
