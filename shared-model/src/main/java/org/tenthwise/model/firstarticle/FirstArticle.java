package org.tenthwise.model.firstarticle;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.words.Refused;

/**
 * A first-article report, made of nothing but what runs hold and what was asked for it. It proposes whether it is
 * complete; it releases nothing.
 *
 * @param runs joined, one a column of results; at least one
 * @param characteristics in the order of the drawing's numbers
 * @param products materials, processes and tests, run by run, each once
 * @param open why it is not complete; empty where it is
 */
public record FirstArticle(
        ReportAsked asked,
        List<Sheet> runs,
        List<ReportLine> characteristics,
        List<Product> products,
        List<Lack> open,
        List<ReportNote> notes) {

    /**
     * A material, a process or a test of the part of one run.
     *
     * @param column place of the run in the report, from 0
     */
    public record Product(int column, Line line) {}

    public FirstArticle {
        runs = List.copyOf(runs);
        characteristics = List.copyOf(characteristics);
        products = List.copyOf(products);
        open = List.copyOf(open);
        notes = List.copyOf(notes);
    }

    /**
     * The report on runs.
     *
     * @param runs in the order of their columns
     * @param before what is known of the part from before them
     * @throws Refused if runs cannot stand in one report, or nothing of the plan is called as what is affected
     */
    public static FirstArticle of(ReportAsked asked, List<Sheet> runs, PartBefore before) {
        if (runs.isEmpty()) {
            throw new Refused("model.report.no-runs");
        }
        JoinedPlans.check(asked.part(), runs);
        Affected affected = new Affected(asked, runs.get(0).plan());
        List<ReportLine> characteristics = Characteristics.of(runs, affected::takesIn);
        List<Product> products = Stream.iterate(0, column -> column + 1)
                .limit(runs.size())
                .flatMap(column -> runs.get(column).lines().stream()
                        .filter(line -> isOfProduct(line)
                                && affected.takesIn(runs.get(column).plan(), line.step()))
                        .filter(line -> line.asked() || !SamePart.asks(runs, column, line))
                        .map(line -> new Product(column, line)))
                .toList();
        SaidAffected said = new SaidAffected(asked, runs, before.baseline(), affected::takesIn);
        return new FirstArticle(
                asked,
                runs,
                characteristics,
                products,
                new Lacks(asked, runs, characteristics, products, affected::takesIn, said.leftOut()).all(),
                new ReportNotes(runs, before.lastMade(), said.unsaid()).all());
    }

    private static boolean isOfProduct(Line line) {
        return line.step()
                .check()
                .asDocument()
                .filter(document -> document.proof().isOfProduct())
                .isPresent();
    }

    /** The plan its runs were made by, the first of several issues. */
    public Plan plan() {
        return runs.get(0).plan();
    }

    /** Whether nothing stands against calling it complete. */
    public boolean isComplete() {
        return open.isEmpty();
    }

    /**
     * Whether anything in it does not conform, whatever was decided of it; so where something unproven is used by
     * concession, and where its runs found out what a partial report is not on.
     */
    public boolean hasNonconformance() {
        return open.stream()
                        .map(Lack::why)
                        .anyMatch(why -> why == Lack.Why.NOT_DECIDED || why == Lack.Why.NONCONFORMANCE)
                || characteristics.stream().anyMatch(one -> one.standing() == CellStanding.DOES_NOT_CONFORM)
                || products.stream().anyMatch(product -> Lacks.isOut(product.line()));
    }

    /** What heads the column of a run: its serial, with the run where a serial was measured in several. */
    public String column(int column) {
        String serial = runs.get(column).run().begun().serial();
        long alike = runs.stream()
                .filter(sheet -> sheet.run().begun().serial().equals(serial))
                .count();
        String id = runs.get(column).run().id();
        boolean ofTwoStations =
                runs.stream().filter(sheet -> sheet.run().id().equals(id)).count() > 1;
        return alike > 1 ? serial + " (" + id + (ofTwoStations ? ", " + (column + 1) : "") + ")" : serial;
    }

    /** The serials it is on, each once, in the order of the columns. */
    public List<String> serials() {
        return runs.stream()
                .map(sheet -> sheet.run().begun().serial())
                .distinct()
                .toList();
    }

    /** Additional changes in force, of the drawing, of the order, each once. */
    public List<String> changes() {
        return Stream.concat(plan().drawing().changes().stream(), asked.changes().stream())
                .distinct()
                .toList();
    }

    /** The route with its issue, as the plan names it or as it was asked; empty where neither does. */
    public String route() {
        return plan().route().orElse(asked.route());
    }

    /** What a characteristic or a product is called where one names it: by its balloon, else by its name. */
    static String called(ReportLine one) {
        return one.number()
                .map(Object::toString)
                .or(() -> one.step().map(Step::name))
                .orElse("");
    }

    /** The same of a check of a plan. */
    static String called(Plan plan, Step step) {
        return plan.balloon(step).map(Object::toString).orElse(step.name());
    }

    /** The characteristics a report is on. */
    private static final class Affected {

        private final ReportAsked asked;

        Affected(ReportAsked asked, Plan plan) {
            this.asked = asked;
            asked.affected().stream()
                    .filter(named -> plan.steps().stream().noneMatch(step -> isCalled(plan, step, named)))
                    .findFirst()
                    .ifPresent(named -> {
                        throw new Refused("model.report.not-in-the-plan", named);
                    });
        }

        private static boolean isCalled(Plan plan, Step step, String named) {
            return step.name().equals(named)
                    || plan.balloon(step)
                            .filter(balloon -> balloon.text().equalsIgnoreCase(named))
                            .isPresent();
        }

        boolean takesIn(Plan plan, Step step) {
            return !asked.isPartial() || asked.affected().stream().anyMatch(named -> isCalled(plan, step, named));
        }

        private boolean isNamed(Step step) {
            return asked.affected().contains(step.name());
        }

        boolean takesIn(AccountLine line) {
            return !asked.isPartial()
                    || line.balloon()
                            .filter(balloon -> asked.affected().stream().anyMatch(balloon.text()::equalsIgnoreCase))
                            .isPresent()
                    || line.match(new AccountLine.Cases<Boolean>() {
                        @Override
                        public Boolean checked(AccountLine.Checked checked) {
                            return isNamed(checked.line().step());
                        }

                        @Override
                        public Boolean unanswered(AccountLine.Unanswered unanswered) {
                            return false;
                        }

                        @Override
                        public Boolean notInThisRun(AccountLine.NotInThisRun left) {
                            return isNamed(left.line().step());
                        }
                    });
        }
    }
}
