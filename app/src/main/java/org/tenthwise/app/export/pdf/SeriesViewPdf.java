package org.tenthwise.app.export.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.tenthwise.app.export.SeriesView;
import org.tenthwise.app.export.SeriesViewFormat;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.TextMetrics;
import org.tenthwise.app.picture.chart.CourseSheet;
import org.tenthwise.app.picture.chart.CourseSheets;
import org.tenthwise.app.picture.chart.DeviationSheets;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.app.series.Followed;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SeriesSums;
import org.tenthwise.app.text.SeriesSentences;
import org.tenthwise.model.words.Words;

/**
 * Views over parts to print and to file: PDF/A-3b (ISO 19005-3). The same parts give the same bytes. Used on the thread
 * of the ledger.
 */
public final class SeriesViewPdf implements SeriesViewFormat {

    private final SeriesSums sums;
    private final Words words;
    private final Paper paper;
    private final String tool;

    /** @param tool that writes it, with its version */
    public SeriesViewPdf(SeriesSums sums, Words words, Paper paper, String tool) {
        this.sums = sums;
        this.words = words;
        this.paper = paper;
        this.tool = tool;
    }

    @Override
    public String extension() {
        return "pdf";
    }

    @Override
    public void write(History history, SeriesView view, OutputStream out) throws IOException {
        switch (view.kind()) {
            case SHARES -> shares(history, view, out);
            case COURSE -> {
                Characteristic one = view.one().orElseThrow();
                CourseSheets sheets = new CourseSheets(sums, words, Optional::empty);
                Series series = CourseSheets.series(history, view.sought(), one);
                course(
                        words.say("history.course.title", one.number(), one.name()),
                        view,
                        at -> sheets.of(history, view.sought(), series, view.of(), view.across(), at),
                        out);
            }
            case DEVIATIONS -> {
                DeviationSheets sheets = new DeviationSheets(sums, words);
                List<Series> found = new Followed(history).of(view.sought());
                course(
                        words.say("history.deviations"),
                        view,
                        at -> sheets.of(found, view.sought(), view.of(), view.across(), at),
                        out);
            }
        }
    }

    private void shares(History history, SeriesView view, OutputStream out) throws IOException {
        List<Series> all = new Followed(history).of(view.sought());
        String title = words.say("history.shares.title", said(view.sought()));
        String about = words.say("history.state", parts(all), words.say("history.size", view.of()));
        write(title, seed(view.toString(), all), pages().shares(title, about, all, view.of()), out);
    }

    /** @param sheets with the part at a place in the picture; with the last one where absent */
    private void course(String title, SeriesView view, Function<OptionalInt, CourseSheet> sheets, OutputStream out)
            throws IOException {
        CourseSheet last = sheets.apply(OptionalInt.empty());
        List<CourseSheet> windows = new ArrayList<>(List.of(last));
        while (windows.get(0).from() > 0) {
            windows.add(0, sheets.apply(OptionalInt.of(windows.get(0).from() - 1)));
        }
        int count = last.series().points().size();
        String about = words.say(
                view.one().isPresent() ? "history.course.about" : "history.deviations.about",
                said(view.sought()),
                count,
                words.say("history.size", view.of()));
        String across = view.across().isEmpty()
                ? ""
                : " "
                        + words.say(
                                "history.across.about",
                                words.list(view.across().stream()
                                        .map(reason -> words.say("history.reason", reason))
                                        .toList()));
        write(
                title,
                seed(view.toString(), List.of(last.series())),
                pages().course(title, about + across, windows, view.one().isEmpty()),
                out);
    }

    private SeriesPages pages() {
        return new SeriesPages(words, paper, tool);
    }

    private String said(Sought sought) {
        return new SeriesSentences(words).sought(sought);
    }

    private String parts(List<Series> all) {
        int most = all.stream().mapToInt(series -> series.points().size()).max().orElse(0);
        return words.say("history.shares.about", all.size(), most);
    }

    /** What is drawn: which parts, and how far each had come. */
    private static String seed(String view, List<Series> all) {
        return all.stream()
                .flatMap(series -> series.points().stream())
                .map(point ->
                        point.run().id() + point.entry() + "/" + point.run().last())
                .collect(Collectors.joining(",", view, ""));
    }

    private void write(String title, String seed, List<Page> leaves, OutputStream out) throws IOException {
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        float width = (float) paper.width() * PdfPen.POINTS_PER_PIXEL;
        float height = (float) paper.height() * PdfPen.POINTS_PER_PIXEL;
        float left = (float) paper.left() * PdfPen.POINTS_PER_PIXEL;
        TextMetrics lettering = new TextMetrics(words);
        try (PDDocument document = new PDDocument()) {
            new Archival(title, tool, seed, words).prepare(document);
            PdfFaces faces = new PdfFaces(document);
            for (Page leaf : leaves) {
                PDPage page = new PDPage(new PDRectangle(width, height));
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    leaf.draw(new Drawing(new PdfPen(content, faces, left, height), lettering, paper.frame()));
                }
            }
            document.save(whole);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        whole.writeTo(out);
    }
}
