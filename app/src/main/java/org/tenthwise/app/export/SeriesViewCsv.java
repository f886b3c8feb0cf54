package org.tenthwise.app.export;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.tenthwise.app.history.History;
import org.tenthwise.app.series.Break;
import org.tenthwise.app.series.DeviationChart;
import org.tenthwise.app.series.Followed;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SeriesSums;

/** Views over parts as tables for a spreadsheet, those that the command writes. */
public final class SeriesViewCsv implements SeriesViewFormat {

    private final SeriesSums sums;

    public SeriesViewCsv(SeriesSums sums) {
        this.sums = sums;
    }

    @Override
    public String extension() {
        return "csv";
    }

    @Override
    public void write(History history, SeriesView view, OutputStream out) throws IOException {
        List<Series> all = new Followed(history).of(view.sought());
        Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        switch (view.kind()) {
            case SHARES -> new ToleranceTable(text, view.of()).write(all);
            case COURSE ->
                new SeriesTable(text).write(all.stream().filter(view::isOf).toList());
            case DEVIATIONS -> new DeviationTable(text, sums, across(view)).write(DeviationChart.of(all, view.of()));
        }
        text.flush();
    }

    private static Set<Break.Reason> across(SeriesView view) {
        return view.across()
                ? Arrays.stream(Break.Reason.values())
                        .filter(reason -> !reason.isStop())
                        .collect(Collectors.toSet())
                : Set.of();
    }
}
