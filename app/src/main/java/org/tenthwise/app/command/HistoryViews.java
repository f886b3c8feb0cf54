package org.tenthwise.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.tenthwise.app.command.HistoryFilters.Choices;
import org.tenthwise.app.export.CouldNotExport;
import org.tenthwise.app.export.DeviationTable;
import org.tenthwise.app.export.Exporter;
import org.tenthwise.app.export.HistoryTable;
import org.tenthwise.app.export.RunsTable;
import org.tenthwise.app.export.SeriesTable;
import org.tenthwise.app.export.SeriesView;
import org.tenthwise.app.export.SeriesView.Kind;
import org.tenthwise.app.export.SeriesViewFormat;
import org.tenthwise.app.export.SumsTable;
import org.tenthwise.app.export.ToleranceTable;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.series.Break;
import org.tenthwise.app.series.Followed;
import org.tenthwise.app.series.Segment;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SeriesSums;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Word;
import picocli.CommandLine.Option;

/** What of a history is written, and how it is looked at. */
final class HistoryViews {

    /** A table of its own each. */
    enum HistoryView {
        READINGS,
        RUNS,
        SERIES,
        TOLERANCE,
        DEVIATION,
        SUMS
    }

    private static final String CSV = "csv";

    @Option(names = "--view", paramLabel = "VIEW")
    private String view = Word.of(HistoryView.READINGS);

    @Option(names = "--as", paramLabel = "FORMAT")
    private String as = CSV;

    @Option(names = "--out", paramLabel = "DIR")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--size", paramLabel = "WHICH")
    private String size = Word.of(SizeOf.AS_CUT);

    @Option(names = "--across", paramLabel = "REASONS", split = ",")
    private List<String> across = List.of();

    @Option(names = "--required", paramLabel = "INDEX")
    private BigDecimal required = SeriesSums.USUAL_INDEX;

    void write(History history, HistoryFilters filters, Sums sums, PrintWriter out) throws CouldNotRun, IOException {
        HistoryView wanted = Choices.of(HistoryView.class, view, "--view");
        SizeOf which = Choices.of(SizeOf.class, size, "--size");
        Set<Break.Reason> lookedAcross = across();
        if (!as.equals(CSV)) {
            throw new CouldNotRun(Message.of("command.history.no-folder", as));
        }
        if (required.signum() <= 0) {
            throw new CouldNotRun(Message.of("command.history.no-index", required.toPlainString()));
        }
        Sought sought = filters.sought();
        if (sought.picksByResult() && (wanted == HistoryView.SUMS || wanted == HistoryView.DEVIATION)) {
            throw new CouldNotRun(Message.of("command.history.picked", Word.of(wanted)));
        }
        Followed followed = new Followed(history);
        switch (wanted) {
            case READINGS -> history.readings(sought, new HistoryTable(out, history::plan));
            case RUNS -> new RunsTable(out).write(history.runs(sought));
            case SERIES -> new SeriesTable(out).write(followed.of(sought));
            case TOLERANCE -> new ToleranceTable(out, which).write(followed.of(sought));
            case DEVIATION ->
                new DeviationTable(out, new SeriesSums(sums), which, lookedAcross).write(followed.of(sought));
            case SUMS -> sums(new SumsTable(out), followed.of(sought), new SeriesSums(sums), which, lookedAcross);
        }
    }

    /** Whether files are asked for, not lines. */
    boolean areFiles() {
        return out.isPresent();
    }

    /**
     * One file, or one for each characteristic that is found.
     *
     * @return the files, in the order of the characteristics
     */
    List<Path> files(History history, HistoryFilters filters, List<SeriesViewFormat> formats)
            throws CouldNotRun, CouldNotExport {
        Optional<SeriesViewFormat> format =
                formats.stream().filter(one -> one.extension().equals(as)).findFirst();
        if (format.isEmpty()) {
            throw new CouldNotRun(Message.of(
                    "command.history.no-choice",
                    "--as",
                    as,
                    formats.stream().map(SeriesViewFormat::extension).toList()));
        }
        HistoryView wanted = Choices.of(HistoryView.class, view, "--view");
        SizeOf which = Choices.of(SizeOf.class, size, "--size");
        if (wanted == HistoryView.SUMS && as.equals(CSV)) {
            throw new CouldNotRun(Message.of("command.history.no-file", Word.of(wanted)));
        }
        if (required.compareTo(SeriesSums.USUAL_INDEX) != 0) {
            throw new CouldNotRun(Message.of("command.history.file-index", SeriesSums.USUAL_INDEX.toPlainString()));
        }
        Set<Break.Reason> over = across();
        Sought sought = filters.sought();
        List<SeriesView> views =
                switch (wanted) {
                    case TOLERANCE -> List.of(new SeriesView(Kind.SHARES, sought, Optional.empty(), which, over));
                    case DEVIATION -> List.of(new SeriesView(Kind.DEVIATIONS, sought, Optional.empty(), which, over));
                    case SERIES, SUMS -> courses(history, sought, which, over);
                    case READINGS, RUNS ->
                        throw new CouldNotRun(Message.of("command.history.no-file", Word.of(wanted)));
                };
        List<Path> files = new ArrayList<>();
        for (SeriesView one : views) {
            files.add(new Exporter()
                    .export(one.name(), as, to -> format.get().write(history, one, to), out.orElseThrow()));
        }
        return files;
    }

    private static List<SeriesView> courses(History history, Sought sought, SizeOf which, Set<Break.Reason> over) {
        return new Followed(history)
                .of(sought).stream()
                        .map(series ->
                                new SeriesView(Kind.COURSE, sought, Optional.of(series.characteristic()), which, over))
                        .toList();
    }

    private Set<Break.Reason> across() throws CouldNotRun {
        Set<Break.Reason> reasons = EnumSet.noneOf(Break.Reason.class);
        for (String word : across) {
            Break.Reason reason = Choices.of(Break.Reason.class, word, "--across");
            if (reason.isStop()) {
                throw new CouldNotRun(Message.of("command.history.stop", word));
            }
            reasons.add(reason);
        }
        return reasons;
    }

    private void sums(SumsTable table, List<Series> all, SeriesSums sums, SizeOf which, Set<Break.Reason> lookedAcross)
            throws IOException {
        for (Series series : all) {
            for (Segment segment : series.segments(lookedAcross)) {
                table.write(series.characteristic(), since(series, segment), sums.of(segment, which, required));
            }
        }
    }

    private static String since(Series series, Segment segment) {
        return series.breaks().stream()
                .filter(broken -> broken.before() == segment.from())
                .flatMap(broken -> broken.reasons().stream())
                .map(Word::of)
                .collect(Collectors.joining(" "));
    }
}
