package org.tenthwise.app.command;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tenthwise.app.reference.Agreement;
import org.tenthwise.app.reference.Comparison;
import org.tenthwise.app.reference.PublishedCases;
import org.tenthwise.app.reference.Topic;
import org.tenthwise.app.reference.TopicResult;
import org.tenthwise.model.words.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Runs the published cases that come along and sets what comes out beside what is printed. */
@Command(name = "reference", customSynopsis = "tenthwise reference [--topic NAME] [--totals]", footerHeading = "%n")
final class ShowReference implements Callable<Integer> {

    private final Tools with;

    @Option(names = "--topic", paramLabel = "NAME")
    private Optional<String> topic = Optional.empty();

    @Option(names = "--totals")
    private boolean totals;

    @Spec
    private CommandSpec spec;

    ShowReference(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotRun {
        Comparison comparison = new Comparison(with.sums());
        List<TopicResult> findings = topics().stream().map(comparison::of).toList();
        ReferenceTable table = new ReferenceTable(with.words());
        if (!totals) {
            findings.forEach(table::topic);
        }
        table.totals(findings)
                .allowances(findings)
                .reasons("command.reference.set-aside", findings, Agreement.ASIDE)
                .reasons("command.reference.disagree", findings, Agreement.DISAGREES);
        if (topic.isEmpty()) {
            table.leftOut(PublishedCases.leftOut());
        }
        PrintWriter to = spec.commandLine().getOut();
        table.lines().forEach(to::println);
        return findings.stream().allMatch(finding -> finding.count(Agreement.DISAGREES) == 0)
                ? Exit.WELL
                : Exit.NOT_WELL;
    }

    private List<Topic> topics() throws CouldNotRun {
        if (topic.isEmpty()) {
            return List.of(Topic.values());
        }
        List<Topic> named = Arrays.stream(Topic.values())
                .filter(one -> one.word().equals(topic.get()))
                .toList();
        if (named.isEmpty()) {
            throw new CouldNotRun(Message.of(
                    "command.no-topic",
                    topic.get(),
                    Arrays.stream(Topic.values()).map(Topic::word).toList()));
        }
        return named;
    }
}
