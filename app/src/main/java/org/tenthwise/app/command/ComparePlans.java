package org.tenthwise.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tenthwise.app.export.ComparisonTable;
import org.tenthwise.app.text.ComparisonWords;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.compare.PlanComparison;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what is otherwise in the second of two plans, by what they mean. */
@Command(name = "compare", customSynopsis = "tenthwise compare PLAN PLAN [--as csv]", footerHeading = "%n")
final class ComparePlans implements Callable<Integer> {

    private static final String CSV = "csv";

    private final Tools with;

    @Parameters(index = "0", paramLabel = "PLAN", descriptionKey = "before")
    private String before = "";

    @Parameters(index = "1", paramLabel = "PLAN", descriptionKey = "after")
    private String after = "";

    @Option(names = "--as", paramLabel = "FORMAT")
    private Optional<String> as = Optional.empty();

    @Spec
    private CommandSpec spec;

    ComparePlans(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotRun, IOException {
        if (as.filter(format -> !format.equals(CSV)).isPresent()) {
            throw new CouldNotRun(Message.of("command.compare.no-format", as.get(), CSV));
        }
        PlanComparison comparison = PlanComparison.of(plan(before), plan(after));
        PrintWriter to = spec.commandLine().getOut();
        if (as.isPresent()) {
            new ComparisonTable(to).write(comparison);
        } else {
            new ComparisonWords(with.words()).lines(comparison).forEach(to::println);
        }
        to.flush();
        return comparison.isAlikeInMeaning() ? Exit.WELL : Exit.NOT_WELL;
    }

    private Plan plan(String given) throws CouldNotRun {
        Named named = Named.plan(given);
        PlanReading reading = with.plans().read(named.text());
        if (reading instanceof PlanReading.Good good) {
            return good.plan();
        }
        throw new CouldNotRun(CheckPlans.lines(named, ((PlanReading.Bad) reading).problems()));
    }
}
