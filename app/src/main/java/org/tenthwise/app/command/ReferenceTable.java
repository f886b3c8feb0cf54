package org.tenthwise.app.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.tenthwise.app.reference.Agreement;
import org.tenthwise.app.reference.ComparedFigure;
import org.tenthwise.app.reference.LeftOut;
import org.tenthwise.app.reference.SourceKind;
import org.tenthwise.app.reference.TopicResult;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Words;

/** Published figures beside those worked out, in lines of text: source by source, a line a figure, in columns. */
final class ReferenceTable {

    private static final String GAP = "  ";
    private static final int WIDTH = 120;
    private static final int CASE = 64;
    private static final int KEY = 20;
    private static final int FIGURE = 22;

    private final Words words;
    private final List<String> lines = new ArrayList<>();

    ReferenceTable(Words words) {
        this.words = words.byKey();
    }

    /** Every figure of a topic under its sources. */
    ReferenceTable topic(TopicResult finding) {
        lines.add(title("command.reference.topic." + finding.topic().word()));
        List<List<String>> cells =
                new ArrayList<>(List.of(heads("case", "result", "published", "computed", "agreement")));
        finding.rows()
                .forEach(row -> cells.add(List.of(
                        shortened(row.of().name(), CASE),
                        shortened(row.key(), KEY),
                        shortened(row.published(), FIGURE),
                        shortened(words.say(row.computed()), FIGURE),
                        word(row))));
        List<String> laid = Columns.laid(cells);
        lines.add(GAP + GAP + laid.get(0));
        Map<String, List<String>> bySource = new LinkedHashMap<>();
        for (int i = 0; i < finding.rows().size(); i++) {
            bySource.computeIfAbsent(source(finding.rows().get(i)), source -> new ArrayList<>())
                    .add(laid.get(i + 1));
        }
        bySource.forEach((source, rows) -> {
            wrapped(GAP, source);
            rows.forEach(row -> lines.add(GAP + GAP + row));
        });
        lines.add("");
        return this;
    }

    /** How many figures of each topic agree. */
    ReferenceTable totals(List<TopicResult> findings) {
        lines.add(title("command.reference.totals"));
        List<List<String>> cells =
                new ArrayList<>(List.of(heads("topic", "cases", "figures", "agree", "aside", "disagree")));
        findings.forEach(finding -> cells.add(counts(finding.topic().word(), List.of(finding))));
        cells.add(counts(words.say("command.reference.all"), findings));
        Columns.laid(cells).forEach(line -> lines.add(GAP + line));
        List<ComparedFigure> published = findings.stream()
                .flatMap(finding -> finding.rows().stream())
                .filter(row -> row.of().standing() == SourceKind.PUBLISHED)
                .toList();
        lines.add("");
        wrapped(
                GAP,
                words.say(Message.of("command.reference.published")
                        .with("all", published.size())
                        .with(
                                "exactly",
                                published.stream()
                                        .filter(ComparedFigure::toTheLastDigit)
                                        .count())
                        .with(
                                "within",
                                published.stream()
                                        .filter(row -> row.agreement() == Agreement.AGREES && !row.toTheLastDigit())
                                        .count())
                        .with(
                                "aside",
                                published.stream()
                                        .filter(row -> row.agreement() == Agreement.ASIDE)
                                        .count())));
        lines.add("");
        return this;
    }

    /** Every figure that stands so, with what there is to say about it. */
    ReferenceTable reasons(String title, List<TopicResult> findings, Agreement agreement) {
        List<ComparedFigure> rows = findings.stream()
                .flatMap(finding -> finding.rows(agreement).stream())
                .toList();
        if (!rows.isEmpty()) {
            lines.add(title(title));
            for (ComparedFigure row : rows) {
                wrapped(
                        GAP,
                        words.say(
                                        "command.reference.reason",
                                        source(row),
                                        row.of().name(),
                                        row.key(),
                                        row.published(),
                                        words.say(row.computed()),
                                        row.because().map(words::say).orElse(""))
                                .strip());
            }
            lines.add("");
        }
        return this;
    }

    /** Where a source is looser than its last digit, reason by reason. */
    ReferenceTable allowances(List<TopicResult> findings) {
        Map<String, Long> reasons = findings.stream()
                .flatMap(finding -> finding.rows(Agreement.AGREES).stream())
                .filter(row -> !row.toTheLastDigit())
                .collect(Collectors.groupingBy(
                        row -> words.say(
                                "reference.of", source(row), row.of().why().orElseThrow()),
                        LinkedHashMap::new,
                        Collectors.counting()));
        if (!reasons.isEmpty()) {
            lines.add(title("command.reference.allowed"));
            reasons.forEach((reason, figures) -> wrapped(GAP, words.say("command.reference.figures", reason, figures)));
            lines.add("");
        }
        return this;
    }

    /** What no sum runs, reason by reason. */
    ReferenceTable leftOut(List<LeftOut> all) {
        if (!all.isEmpty()) {
            lines.add(title("command.reference.left-out"));
            all.stream()
                    .collect(Collectors.groupingBy(
                            LeftOut::source,
                            LinkedHashMap::new,
                            Collectors.groupingBy(LeftOut::reason, LinkedHashMap::new, Collectors.toList())))
                    .forEach((source, reasons) -> reasons.forEach((reason, cases) -> wrapped(
                            GAP,
                            words.say(Message.of("command.reference.left-out.line")
                                    .with("source", source)
                                    .with("n", cases.size())
                                    .with("name", cases.get(0).name())
                                    .with("reason", reason)))));
            lines.add("");
        }
        return this;
    }

    List<String> lines() {
        return List.copyOf(lines);
    }

    private List<String> counts(String name, List<TopicResult> findings) {
        List<String> cells = new ArrayList<>(List.of(
                name,
                String.valueOf(findings.stream().mapToInt(TopicResult::cases).sum()),
                String.valueOf(findings.stream()
                        .mapToInt(finding -> finding.rows().size())
                        .sum())));
        Arrays.stream(Agreement.values())
                .forEach(agreement -> cells.add(String.valueOf(findings.stream()
                        .mapToLong(finding -> finding.count(agreement))
                        .sum())));
        return cells;
    }

    private String source(ComparedFigure row) {
        SourceKind standing = row.of().standing();
        return standing == SourceKind.PUBLISHED
                ? row.of().source()
                : words.say("reference.standing", row.of().source(), words.say("command.reference.standing", standing));
    }

    private String word(ComparedFigure row) {
        if (row.agreement() == Agreement.AGREES && !row.toTheLastDigit()) {
            return words.say(
                    "command.reference.within", row.of().within().get(row.key()).toPlainString());
        }
        return words.say("reference.agreement", row.agreement());
    }

    private List<String> heads(String... columns) {
        return Arrays.stream(columns)
                .map(column -> words.say("command.reference.column." + column))
                .toList();
    }

    private String title(String key) {
        String title = words.say(key);
        return title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1);
    }

    private static String shortened(String text, int most) {
        return text.length() <= most ? text : text.substring(0, most - 1).strip() + "…";
    }

    private void wrapped(String indent, String text) {
        StringBuilder line = new StringBuilder(indent);
        for (String word : text.split(" +")) {
            if (line.length() + word.length() > WIDTH && !line.toString().isBlank()) {
                lines.add(line.toString().stripTrailing());
                line = new StringBuilder(indent).append(GAP);
            }
            line.append(word).append(' ');
        }
        lines.add(line.toString().stripTrailing());
    }
}
