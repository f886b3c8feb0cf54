package org.tenthwise.app.ui.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.reference.Agreement;
import org.tenthwise.app.reference.ComparedFigure;
import org.tenthwise.app.reference.Comparison;
import org.tenthwise.app.reference.LeftOut;
import org.tenthwise.app.reference.PublishedCases;
import org.tenthwise.app.reference.SourceKind;
import org.tenthwise.app.reference.Topic;
import org.tenthwise.app.reference.TopicResult;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.model.words.Words;

/** Which list of published cases is in hand, and what stands in it. The cases are run on the worker. */
public final class ReferenceViewModel {

    /** What can be chosen at the side: a topic, or what is set aside or left out of all of them. */
    public record Chapter(String id, String name, String counts, Runnable open) {}

    /**
     * The list in hand.
     *
     * @param chapter its chapter, by id
     * @param title the topic, or the source whole
     * @param up back to the sources, where one of them is opened
     */
    public record Shown(String chapter, String title, List<ReferenceLine> lines, Optional<Runnable> up) {

        public Shown {
            lines = List.copyOf(lines);
        }
    }

    private static final String ASIDE = "aside";
    private static final String LEFT_OUT = "left-out";

    private record Ran(List<TopicResult> findings, List<LeftOut> leftOut) {}

    private final Comparison comparison;
    private final LedgerTasks tasks;
    private final Words words;
    private final ReadOnlyObjectWrapper<Ran> ran = new ReadOnlyObjectWrapper<>(new Ran(List.of(), List.of()));
    private final ReadOnlyObjectWrapper<Shown> shown;
    private final FigureNames names;

    public ReferenceViewModel(Comparison comparison, LedgerTasks tasks, Words words) {
        this.comparison = comparison;
        this.tasks = tasks;
        this.words = words.byKey();
        this.names = new FigureNames(comparison, words);
        this.shown =
                new ReadOnlyObjectWrapper<>(new Shown("", words.say("reference.running"), List.of(), Optional.empty()));
    }

    /** How many figures agree; empty until the cases were run. */
    public ObservableValue<String> sentenceValue() {
        return ran.map(all -> all.findings().isEmpty() ? "" : sentence(all.findings()));
    }

    private String sentence(List<TopicResult> all) {
        long wrong = count(all, Agreement.DISAGREES);
        return words.say(
                wrong == 0 ? "reference.none-disagrees" : "reference.some-disagree",
                count(all, Agreement.AGREES),
                count(all, Agreement.ASIDE),
                wrong);
    }

    /** Empty until the cases were run. */
    public ObservableValue<List<Chapter>> chaptersValue() {
        return ran.map(this::chapters);
    }

    public ReadOnlyObjectProperty<Shown> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** Runs all cases, unless they were run. */
    public void load() {
        if (ran.get().findings().isEmpty()) {
            tasks.run(
                    () -> new Ran(
                            Arrays.stream(Topic.values()).map(comparison::of).toList(), PublishedCases.leftOut()),
                    all -> {
                        ran.set(all);
                        sources(all.findings().get(0));
                    });
        }
    }

    private List<Chapter> chapters(Ran all) {
        if (all.findings().isEmpty()) {
            return List.of();
        }
        List<Chapter> chapters = new ArrayList<>();
        all.findings()
                .forEach(finding -> chapters.add(new Chapter(
                        finding.topic().word(),
                        words.say("reference.topic", finding.topic()),
                        words.say(
                                "reference.counts",
                                finding.cases(),
                                finding.count(Agreement.AGREES),
                                finding.count(Agreement.ASIDE)),
                        () -> sources(finding))));
        chapters.add(new Chapter(
                ASIDE,
                words.say("reference.aside"),
                words.say("reference.figures", count(all.findings(), Agreement.ASIDE)),
                () -> aside(all)));
        chapters.add(new Chapter(
                LEFT_OUT,
                words.say("reference.left-out"),
                words.say("reference.cases", all.leftOut().size()),
                () -> leftOut(all)));
        return chapters;
    }

    private void sources(TopicResult finding) {
        List<ReferenceLine> lines = new ArrayList<>();
        bySource(finding)
                .forEach((source, rows) -> lines.add(
                        new ReferenceLine.Source(source, counts(rows), () -> figures(finding, source, rows))));
        shown.set(new Shown(
                finding.topic().word(), words.say("reference.topic", finding.topic()), lines, Optional.empty()));
    }

    private Map<String, List<ComparedFigure>> bySource(TopicResult finding) {
        return finding.rows().stream()
                .collect(Collectors.groupingBy(this::source, LinkedHashMap::new, Collectors.toList()));
    }

    private String source(ComparedFigure row) {
        SourceKind standing = row.of().standing();
        return standing == SourceKind.PUBLISHED
                ? row.of().source()
                : words.say("reference.standing", row.of().source(), words.say("reference.standing", standing));
    }

    private void figures(TopicResult finding, String source, List<ComparedFigure> rows) {
        shown.set(new Shown(
                finding.topic().word(),
                source,
                rows.stream().map(row -> figure(row.of().name(), row)).toList(),
                Optional.of(() -> sources(finding))));
    }

    private ReferenceLine figure(String name, ComparedFigure row) {
        return new ReferenceLine.Figure(
                name,
                names.name(row.key()),
                names.withUnit(row, row.published()),
                names.withUnit(row, words.say(row.computed())),
                row.agreement(),
                words.say("reference.agreement", row.agreement()),
                row.because().map(words::say).orElse(""));
    }

    private void aside(Ran all) {
        shown.set(new Shown(
                ASIDE,
                words.say("reference.aside"),
                all.findings().stream()
                        .flatMap(finding -> finding.rows(Agreement.ASIDE).stream())
                        .map(row -> figure(
                                words.say("reference.of", source(row), row.of().name()), row))
                        .toList(),
                Optional.empty()));
    }

    private void leftOut(Ran all) {
        shown.set(new Shown(
                LEFT_OUT,
                words.say("reference.left-out"),
                all.leftOut().stream()
                        .<ReferenceLine>map(one -> new ReferenceLine.Said(
                                words.say("reference.of", one.source(), one.name()), one.reason()))
                        .toList(),
                Optional.empty()));
    }

    private String counts(List<ComparedFigure> rows) {
        long agree =
                rows.stream().filter(row -> row.agreement() == Agreement.AGREES).count();
        if (agree == 1 && rows.size() == 1) {
            return words.say("reference.one-agrees");
        }
        return agree == rows.size()
                ? words.say("reference.all-agree", rows.size())
                : words.say("reference.some-agree", agree, rows.size());
    }

    private static long count(List<TopicResult> findings, Agreement agreement) {
        return findings.stream().mapToLong(finding -> finding.count(agreement)).sum();
    }
}
