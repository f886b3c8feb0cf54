package org.tenthwise.app.firstarticle;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.firstarticle.CellStanding;
import org.tenthwise.model.firstarticle.FirstArticle;
import org.tenthwise.model.firstarticle.FoundInRun;
import org.tenthwise.model.firstarticle.ReportLine;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Words;

/**
 * The form of the characteristics as a table: the columns of the standard in its order, one of results a run, then
 * columns of our own. Drawing signs stand as the plan has them.
 */
public final class CharacteristicForm {

    /** Columns before those of the results. */
    private static final int RESULTS = 4;

    /** A count, a sign and one figure: nothing in it says how far the size may go. */
    private static final Pattern BARE_SIZE = Pattern.compile("(\\d+ ?[x×X] ?)?[Ø⌀R]? ?\\d*[.,]?\\d+°?");

    private final FirstArticle article;
    private final Words words;
    private final ResultText results;
    private final MoreText more;

    public CharacteristicForm(FirstArticle article, Words words) {
        this.article = article;
        this.words = words;
        this.results = new ResultText(words);
        this.more = new MoreText(article, words);
    }

    /** With the columns of our own behind those of the standard. */
    public FormTable whole() {
        List<String> heads = new ArrayList<>(heads());
        Stream.of(
                        "lower",
                        "upper",
                        "unit",
                        "gauge",
                        "certificate",
                        "due",
                        "document",
                        "uncertainty",
                        "verdict",
                        "serial",
                        "operation",
                        "by",
                        "at",
                        "report",
                        "part")
                .map(key -> NumberedField.own(key).head(words))
                .forEach(heads::add);
        return new FormTable(
                heads,
                article.characteristics().stream()
                        .map(one -> Stream.concat(standard(one).stream(), own(one).stream())
                                .toList())
                        .toList());
    }

    /**
     * The columns of the standard with gauges and verdict behind them, of the runs from one column to before another.
     */
    public FormTable printed(int from, int to) {
        List<String> all = heads();
        columns()
                .map(column -> RESULTS + column)
                .forEach(place -> all.set(
                        place,
                        words.say(
                                "report.lengths-in",
                                all.get(place),
                                article.plan().unit().symbol())));
        List<String> heads = new ArrayList<>(within(all, from, to));
        heads.add(NumberedField.own("gauge").head(words));
        heads.add(NumberedField.own("verdict").head(words));
        List<List<String>> rows = new ArrayList<>();
        Set<Integer> outstanding = new HashSet<>();
        for (ReportLine one : article.characteristics()) {
            if (IntStream.range(from, to).anyMatch(column -> one.of(column).isPresent())) {
                if (one.standing() != CellStanding.CONFORMS) {
                    outstanding.add(rows.size());
                }
                List<String> cells = new ArrayList<>(within(standard(one), from, to));
                cells.add(each(one, result -> new Behind(article, result).gauges()));
                cells.add(each(one, result -> words.say("verdict", result.line().standing())));
                rows.add(cells);
            }
        }
        return new FormTable(heads, rows, outstanding);
    }

    /** Without the results of the other runs. */
    private List<String> within(List<String> cells, int from, int to) {
        return IntStream.range(0, cells.size())
                .filter(place -> place < RESULTS
                        || place >= RESULTS + article.runs().size()
                        || place - RESULTS >= from && place - RESULTS < to)
                .mapToObj(cells::get)
                .toList();
    }

    private List<String> heads() {
        List<String> heads = new ArrayList<>();
        heads.add(new NumberedField("5", "char-no").head(words));
        heads.add(new NumberedField("6", "reference-location").head(words));
        heads.add(new NumberedField("7", "designator").head(words));
        heads.add(new NumberedField("8", "requirement").head(words));
        columns()
                .mapToObj(column -> article.runs().size() == 1
                        ? new NumberedField("9", "results").head(words)
                        : words.say(
                                "report.results-of",
                                new NumberedField("9", "results").head(words),
                                article.column(column)))
                .forEach(heads::add);
        heads.add(new NumberedField("10", "tooling").head(words));
        heads.add(new NumberedField("11", "nonconformance").head(words));
        heads.add(new NumberedField(article.asked().edition() == ReportAsked.Edition.B ? "14" : "12", "additional")
                .head(words));
        return heads;
    }

    private IntStream columns() {
        return IntStream.range(0, article.runs().size());
    }

    private List<String> standard(ReportLine one) {
        List<String> cells = new ArrayList<>();
        cells.add(one.number().map(Object::toString).orElse(""));
        cells.add(more.place(one));
        cells.add(one.drawing().designator().orElse(""));
        cells.add(requirement(one));
        columns().mapToObj(column -> one.of(column).map(results::of).orElse("")).forEach(cells::add);
        cells.add(new ToolingText(article, words).of(one));
        cells.add(String.join("; ", one.nonconformances()));
        cells.add(more.of(one));
        return cells;
    }

    /**
     * As drawn; with the limits where they come from a general tolerance or a zone, or a bare size is all that is
     * drawn, as where the title block has its tolerance; by them alone where nothing is drawn.
     */
    public String requirement(ReportLine one) {
        String drawn = one.drawing().requirement();
        String limits = one.step().map(new Sentences(words)::limits).orElse("");
        if (drawn.isEmpty()) {
            return limits.isEmpty() ? one.step().map(Step::name).orElse("") : limits;
        }
        boolean worked =
                one.step().flatMap(Step::limits).flatMap(Limits::origin).isPresent();
        boolean bare = BARE_SIZE.matcher(drawn).matches() && !limits.isEmpty();
        return worked || bare ? words.say("report.requirement", drawn, limits) : drawn;
    }

    /** What each run found, as it stands in its column; where there are several, with the run it is of. */
    public String results(ReportLine one) {
        return words.list(one.results().stream()
                .filter(found -> !results.of(found).isEmpty())
                .map(found -> article.runs().size() == 1
                        ? results.of(found)
                        : words.say("report.more.of", article.column(found.column()), results.of(found)))
                .toList());
    }

    private List<String> own(ReportLine one) {
        Optional<Limits> limits = one.step().flatMap(Step::limits);
        return List.of(
                figure(limits.flatMap(Limits::lower)),
                figure(limits.flatMap(Limits::upper)),
                limits.map(of -> of.unit().symbol()).orElse(""),
                each(one, result -> new Behind(article, result).gauges()),
                each(one, result -> new Behind(article, result).certificates()),
                each(one, result -> new Behind(article, result).due()),
                each(one, result -> new Behind(article, result).document()),
                one.results()
                        .get(0)
                        .checked()
                        .flatMap(checked -> checked.line().finding().expanded())
                        .map(expanded -> limits.map(of -> new BigDecimal(expanded.in(of.unit())
                                                .stripTrailingZeros()
                                                .toPlainString())
                                        .toPlainString())
                                .orElse(""))
                        .orElse(""),
                each(one, result -> words.say("verdict", result.line().standing())),
                one.results().stream()
                        .map(result -> article.column(result.column()))
                        .collect(Collectors.joining("; ")),
                one.step().map(step -> String.valueOf(step.operation())).orElse(""),
                each(one, result -> new Behind(article, result).people()),
                each(one, result -> new Behind(article, result).last()),
                article.asked().identifier(),
                article.asked().part().number());
    }

    /** The same of all runs once, else of each in the order of the columns. */
    private static String each(ReportLine one, Function<FoundInRun, String> of) {
        List<String> said = one.results().stream().map(of).toList();
        return said.stream().distinct().count() == 1 ? said.get(0) : String.join("; ", said);
    }

    private static String figure(Optional<Written> written) {
        return written.map(of -> of.unit().text(of.figure())).orElse("");
    }
}
