package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.TextMetrics;
import org.tenthwise.app.picture.VerdictShape;
import org.tenthwise.app.picture.chart.CourseSheet;
import org.tenthwise.app.picture.chart.SeriesCharts;
import org.tenthwise.app.picture.chart.SharePicture;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.app.text.SeriesSentences;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** The pages of a view over parts: the picture, what it shows in sentences, and a line for every part. */
final class SeriesPages {

    private static final double TOP = 36;
    private static final double FOOT = 54;
    private static final double CHART = 340;
    private static final double BAR = 70;
    private static final double ROW = 44;
    private static final double MARK = 10;
    private static final int ROWS = 20;

    private final Words words;
    private final Paper paper;
    private final String tool;
    private final PageFlow flow;
    private final Wrapping wrapping;

    SeriesPages(Words words, Paper paper, String tool) {
        this.words = words;
        this.paper = paper;
        this.tool = tool;
        this.wrapping = new Wrapping(new TextMetrics(words));
        this.flow = new PageFlow(wrapping, TOP, paper.height() - FOOT);
    }

    /**
     * One characteristic, or several by their deviation.
     *
     * @param windows of its parts, in the order made, the last one with what is told
     * @param several whether each part has to say which characteristic it is of
     */
    List<Page> course(String title, String sought, List<CourseSheet> windows, boolean several) {
        head(title, sought);
        for (CourseSheet window : windows) {
            picture(window.picture(), CHART);
        }
        told(windows.get(windows.size() - 1));
        new PartTable(words, flow, several).add(windows.get(0).series());
        return foot(title);
    }

    /** All characteristics of what is looked for. */
    List<Page> shares(String title, String sought, List<Series> all, SizeOf of) {
        head(title, sought);
        SeriesCharts charts = new SeriesCharts(words);
        for (int from = 0; from < Math.max(1, all.size()); from += ROWS) {
            List<Series> some = all.subList(from, Math.min(all.size(), from + ROWS));
            SharePicture picture = charts.shares(some, of);
            picture(picture, ROW * Math.max(1, some.size()) + ROW / 2);
        }
        return foot(title);
    }

    private void head(String title, String sought) {
        flow.text(title, Style.TITLE, PageFlow.LEFT, PageFlow.WIDTH);
        flow.down(2);
        flow.text(sought, Style.STRONG.regular(), PageFlow.LEFT, PageFlow.WIDTH);
        flow.down(4);
        flow.rule(Strokes.THICK, Role.INK);
        flow.down(10);
    }

    private void picture(Picture picture, double height) {
        flow.need(height);
        double top = flow.y();
        flow.leaf()
                .add(drawing -> picture.draw(
                        drawing.inset(new Point(PageFlow.LEFT, top), Frame.print(PageFlow.WIDTH, height))));
        flow.down(height + 10);
    }

    private void told(CourseSheet sheet) {
        flow.need(60);
        flow.text(sheet.since(), Style.NAME, PageFlow.LEFT, PageFlow.WIDTH);
        flow.down(3);
        String before = "";
        int drawn = 0;
        for (SeriesSentences.Told told : sheet.told()) {
            flow.need(3 * Style.TEXT.leading());
            if (!told.head().equals(before)) {
                flow.down(4);
                flow.text(told.head(), Style.SMALL, PageFlow.LEFT, PageFlow.WIDTH);
                before = told.head();
            }
            sentence(told);
            if (told.about() == SeriesSentences.About.CAPABILITY) {
                sheet.capability().get(drawn++).ifPresent(bar -> {
                    flow.down(2);
                    picture(bar, BAR);
                });
            }
        }
        if (!sheet.leftOut().isEmpty()) {
            flow.down(4);
            flow.text(words.say("history.left-out"), Style.SMALL, PageFlow.LEFT, PageFlow.WIDTH);
            sheet.leftOut().forEach(out -> flow.text(out, Style.TEXT, PageFlow.LEFT, PageFlow.WIDTH));
        }
        flow.down(10);
    }

    /** What speaks against the parts has the mark of it, and is printed bold. */
    private void sentence(SeriesSentences.Told told) {
        if (told.weight() == SeriesSentences.Weight.AGAINST) {
            double at = flow.y() + Style.BOLD.leading() / 2;
            flow.leaf()
                    .add(drawing -> VerdictShape.draw(
                            drawing, VerdictKind.FAIL, new Point(PageFlow.LEFT + MARK / 2, at), MARK / 2));
            flow.text(told.sentence(), Style.BOLD, PageFlow.LEFT + 1.5 * MARK, PageFlow.WIDTH - 1.5 * MARK);
        } else {
            Style style = told.weight() == SeriesSentences.Weight.STRONG ? Style.BOLD : Style.TEXT;
            flow.text(told.sentence(), style, PageFlow.LEFT, PageFlow.WIDTH);
        }
    }

    /** Which view it is and what it does not say, on every leaf. */
    private List<Page> foot(String title) {
        List<Page> leaves = new ArrayList<>(flow.leaves());
        for (int i = 0; i < leaves.size(); i++) {
            String page = words.say("record.page", i + 1, leaves.size());
            leaves.get(i).add(drawing -> {
                double top = paper.height() - FOOT + 10;
                PageFlow.rule(drawing, top, Strokes.THIN, Role.INK);
                List<String> lines =
                        wrapping.lines(words.say("history.foot", title, tool), Style.SMALL, PageFlow.WIDTH - 96);
                for (int line = 0; line < lines.size(); line++) {
                    drawing.text(
                            Style.SMALL.label(lines.get(line)),
                            new Point(PageFlow.LEFT, top + 6 + line * Style.SMALL.leading()),
                            Anchor.LEFT_BELOW);
                }
                drawing.text(Style.SMALL_BOLD.label(page), new Point(PageFlow.RIGHT, top + 6), Anchor.RIGHT_BELOW);
            });
        }
        return leaves;
    }
}
