package org.tenthwise.app.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.tenthwise.checklists.rules.PlanProblem;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.checklists.rules.PlanRemarks;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Judges plan files: every problem of every file, each with its place, and what is worth a second look. */
@Command(name = "check", customSynopsis = "tenthwise check PLAN...")
final class CheckPlans implements Callable<Integer> {

    private final Tools with;

    @Parameters(paramLabel = "PLAN", descriptionKey = "plan", arity = "1..*")
    private List<String> plans = List.of();

    @Spec
    private CommandSpec spec;

    CheckPlans(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotRun {
        PrintWriter to = spec.commandLine().getOut();
        List<Message> unread = new ArrayList<>();
        boolean sound = true;
        for (String plan : plans) {
            try {
                sound &= judge(Named.plan(plan), to);
            } catch (CouldNotRun e) {
                unread.add(e.why());
            }
        }
        if (!unread.isEmpty()) {
            throw new CouldNotRun(unread);
        }
        return sound ? Exit.WELL : Exit.NOT_WELL;
    }

    private boolean judge(Named named, PrintWriter to) {
        PlanReading reading = with.plans().read(named.text());
        if (reading instanceof PlanReading.Good good) {
            Plan plan = good.plan();
            to.println(with.words()
                    .say(
                            "command.check.sound",
                            named.name(),
                            plan.part().number(),
                            plan.part().revision(),
                            plan.issue(),
                            plan.steps().size()));
            good.requirements().forEach(read -> to.println(with.words().say("command.check.read", named.name(), read)));
            PlanRemarks.of(plan)
                    .forEach(remark -> to.println(with.words().say("command.check.remark", named.name(), remark)));
            return true;
        }
        lines(named, ((PlanReading.Bad) reading).problems())
                .forEach(problem -> to.println(with.words().say(problem)));
        return false;
    }

    static List<Message> lines(Named named, List<PlanProblem> problems) {
        return problems.stream()
                .map(problem ->
                        Message.of("command.problem", named.name(), problem.line(), problem.column(), problem.what()))
                .toList();
    }
}
