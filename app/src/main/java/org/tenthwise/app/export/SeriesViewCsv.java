package org.tenthwise.app.export;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.tenthwise.app.history.History;
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
            case DEVIATIONS -> new DeviationTable(text, sums, view.of(), view.across()).write(all);
        }
        text.flush();
    }
}
