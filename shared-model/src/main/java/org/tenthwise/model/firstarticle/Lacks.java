package org.tenthwise.model.firstarticle;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.tenthwise.model.plan.BalloonGap;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.DrawingAccount;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.verdict.VerdictKind;

/** Finds why a report is not complete. */
final class Lacks {

    private final ReportAsked asked;
    private final List<Sheet> runs;
    private final List<ReportLine> characteristics;
    private final List<FirstArticle.Product> products;
    private final BiPredicate<Plan, Step> takenIn;
    private final List<String> leftOut;
    private final List<Lack> found = new ArrayList<>();

    /**
     * @param takenIn which steps the report is on
     * @param leftOut what a partial report was to be on as well
     */
    Lacks(
            ReportAsked asked,
            List<Sheet> runs,
            List<ReportLine> characteristics,
            List<FirstArticle.Product> products,
            BiPredicate<Plan, Step> takenIn,
            List<String> leftOut) {
        this.asked = asked;
        this.runs = runs;
        this.characteristics = characteristics;
        this.products = products;
        this.takenIn = takenIn;
        this.leftOut = List.copyOf(leftOut);
    }

    List<Lack> all() {
        ofRuns(Lack.Why.RUN_OPEN, sheet -> sheet.run().closed().isEmpty());
        ofRuns(Lack.Why.SIGNED_AGAINST, sheet -> !sheet.against().isEmpty());
        of(Lack.Why.CHARACTERISTIC_OPEN, result -> result.standing() == CellStanding.OPEN);
        of(
                Lack.Why.UNPROVEN,
                result -> result.standing() == CellStanding.UNPROVEN
                        && result.decided().isEmpty());
        of(Lack.Why.NOT_DECIDED, result -> isOut(result) && result.decided().isEmpty());
        of(Lack.Why.NO_NUMBER, result -> result.decided()
                .filter(decided -> decided.document().isEmpty())
                .isPresent());
        of(
                Lack.Why.NONCONFORMANCE,
                result -> result.standing().standsAlone() && result.decided().isPresent());
        ofProducts(Lack.Why.PRODUCT_OPEN, line -> line.finding().verdict().standing() == VerdictKind.OPEN);
        ofProducts(Lack.Why.PRODUCT_OUT, Lacks::isOut);
        if (asked.isPartial()) {
            add(Lack.Why.AFFECTED_LEFT_OUT, leftOut.stream());
            outBeside();
        } else {
            gaps();
        }
        ofForm(Lack.Why.NO_ORGANIZATION, asked.organization().isBlank());
        ofForm(Lack.Why.NO_REASON, asked.reason().isBlank() && asked.edition() == ReportAsked.Edition.C);
        ofForm(
                Lack.Why.NO_ROUTE,
                asked.route().isBlank() && runs.get(0).plan().route().isEmpty());
        ofForm(Lack.Why.ASSEMBLY, asked.assembly());
        return found;
    }

    /** Whether what proves a material, a process or a test says that it is not as it must be. */
    static boolean isOut(Line product) {
        VerdictKind standing = product.finding().verdict().standing();
        return standing != VerdictKind.PASS && standing != VerdictKind.OPEN;
    }

    private static boolean isOut(FoundInRun result) {
        return result.standing() == CellStanding.DOES_NOT_CONFORM;
    }

    private void add(Lack.Why why, Stream<String> what) {
        List<String> named = Stream.concat(said(why).stream(), what).distinct().toList();
        found.removeIf(lack -> lack.why() == why);
        if (!named.isEmpty()) {
            found.add(new Lack(why, named));
        }
    }

    private List<String> said(Lack.Why why) {
        return found.stream()
                .filter(lack -> lack.why() == why)
                .findFirst()
                .map(Lack::what)
                .orElse(List.of());
    }

    private void ofForm(Lack.Why why, boolean missing) {
        if (missing) {
            found.add(new Lack(why, List.of()));
        }
    }

    private void ofRuns(Lack.Why why, Predicate<Sheet> which) {
        add(why, runs.stream().filter(which).map(sheet -> sheet.run().id()));
    }

    private void of(Lack.Why why, Predicate<FoundInRun> which) {
        add(
                why,
                characteristics.stream()
                        .filter(one -> one.results().stream().anyMatch(which))
                        .map(FirstArticle::called));
    }

    private void ofProducts(Lack.Why why, Predicate<Line> which) {
        add(why, products.stream().map(FirstArticle.Product::line).filter(which).map(line -> line.step()
                .name()));
    }

    private void gaps() {
        add(
                Lack.Why.BALLOONS_MISSING,
                runs.stream()
                        .flatMap(sheet -> DrawingAccount.of(sheet).gaps().stream())
                        .map(Lacks::named));
    }

    private static String named(BalloonGap gap) {
        return gap.isOne() ? gap.row() + gap.first() : gap.row() + gap.first() + "\u2013" + gap.row() + gap.last();
    }

    /** What a partial report is not on and its runs found out all the same: a part that is scrap proves nothing. */
    private void outBeside() {
        outBeside(Lack.Why.NOT_DECIDED, line -> line.disposed().isEmpty());
        outBeside(Lack.Why.NONCONFORMANCE, line -> line.disposed().isPresent());
    }

    private void outBeside(Lack.Why why, Predicate<Line> which) {
        add(why, runs.stream().flatMap(sheet -> sheet.characteristics().stream()
                .filter(line -> sheet.isOut(line) && !takenIn.test(sheet.plan(), line.step()))
                .filter(which)
                .map(line -> called(sheet, line.step()))));
    }

    private static String called(Sheet sheet, Step step) {
        return FirstArticle.called(sheet.plan(), step);
    }
}
