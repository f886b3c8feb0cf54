package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tenthwise.app.firstarticle.ArticleReport;
import org.tenthwise.app.firstarticle.CharacteristicForm;
import org.tenthwise.app.firstarticle.PartForm;
import org.tenthwise.app.firstarticle.ProductForm;
import org.tenthwise.app.firstarticle.ReportWords;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.TextMetrics;
import org.tenthwise.model.firstarticle.FirstArticle;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.words.Words;

/** The three forms of a report laid out page by page, fields 1 to 4 at the head of each. */
final class FormPages {

    /** More columns of results do not go beside each other; the others follow under them. */
    private static final int RESULTS_AT_ONCE = 4;

    private static final List<Double> PRODUCTS = List.of(130.0, 130.0, 60.0, 110.0, 90.0, 120.0, 110.0, 90.0, 200.0);
    private static final List<Double> BEFORE_RESULTS = List.of(52.0, 72.0, 96.0, 186.0);
    private static final double RESULT = 96;
    private static final List<Double> BEHIND_RESULTS = List.of(90.0, 70.0, 230.0, 80.0, 70.0);
    private static final int FIELDS_IN_A_ROW = 4;

    private final ArticleReport report;
    private final FirstArticle article;
    private final Words words;
    private final FormSheet sheet;
    private final FormGrid grid;
    private final PartForm part;
    private final ReportWords said;

    FormPages(ArticleReport report, Words words, Paper paper, TextMetrics lettering) {
        this.report = report;
        this.article = report.article();
        this.words = words;
        this.sheet = new FormSheet(new Wrapping(lettering), paper);
        this.grid = new FormGrid(sheet, words);
        this.part = new PartForm(report, words);
        this.said = new ReportWords(words);
    }

    FormSheet sheet() {
        return sheet;
    }

    List<Page> all() {
        first();
        second();
        third();
        List<Page> pages = sheet.pages();
        for (int i = 0; i < pages.size(); i++) {
            foot(pages.get(i), i + 1, pages.size());
        }
        return pages;
    }

    private void head(int form) {
        double top = sheet.y();
        sheet.write(words.say("report.form", form), Style.HEADING, FormSheet.MARGIN, top);
        String arranged = said.arranged(article);
        sheet.write(
                arranged,
                Style.TEXT,
                sheet.right() - sheet.wrapping().width(arranged, Style.TEXT),
                top + Style.HEADING.leading() - Style.TEXT.leading());
        sheet.down(Style.HEADING.leading() + 4);
        grid.row(part.head());
        sheet.down(8);
    }

    private void first() {
        sheet.begin(() -> head(1));
        rows(part.part());
        rows(part.index());
        sheet.down(8);
        rows(part.end());
        sheet.down(10);
        sheet.text(said.state(article), Style.NAME);
        said.open(article).forEach(line -> sheet.text(line, Style.TEXT));
        said.notes(article).forEach(line -> sheet.text(line, Style.TEXT));
        if (!report.movedOn().isEmpty()) {
            sheet.text(words.say("report.moved-on", report.movedOn()), Style.BOLD);
        }
        sheet.down(8);
        sheet.text(words.say("report.runs"), Style.STRONG);
        for (int column = 0; column < article.runs().size(); column++) {
            sheet.text(run(column), Style.SMALL);
        }
    }

    /** A run with its serial and what it is known by, as the ledger has it. */
    private String run(int column) {
        Run run = article.runs().get(column).run();
        String known = report.kept()
                .map(kept -> kept.runs().get(column))
                .map(joined -> words.say("report.run.head", joined.entries(), joined.head()))
                .orElse("");
        return words.say("report.run", article.column(column), run.id(), known);
    }

    private void rows(List<PartForm.Filled> fields) {
        for (int from = 0; from < fields.size(); from += FIELDS_IN_A_ROW) {
            grid.row(fields.subList(from, Math.min(from + FIELDS_IN_A_ROW, fields.size())));
        }
    }

    private void second() {
        sheet.begin(() -> head(2));
        new FormRows(sheet, words, PRODUCTS).add(new ProductForm(article, words).table());
        foot(2);
    }

    private void third() {
        sheet.begin(() -> head(3));
        CharacteristicForm form = new CharacteristicForm(article, words);
        int runs = article.runs().size();
        for (int from = 0; from < runs; from += RESULTS_AT_ONCE) {
            int to = Math.min(runs, from + RESULTS_AT_ONCE);
            List<Double> shares = new ArrayList<>(BEFORE_RESULTS);
            shares.addAll(Collections.nCopies(to - from, RESULT));
            shares.addAll(BEHIND_RESULTS);
            new FormRows(sheet, words, shares).add(form.printed(from, to));
            sheet.down(10);
        }
        foot(3);
    }

    private void foot(int form) {
        List<PartForm.Filled> fields = part.signedAtFoot(form);
        if (!fields.isEmpty()) {
            sheet.down(8);
            grid.row(fields);
        }
    }

    private void foot(Page page, int number, int of) {
        double top = sheet.bottom() + 8;
        double right = sheet.right();
        page.add(drawing -> drawing.across(top, FormSheet.MARGIN, right, Strokes.THIN, Role.INK));
        FormSheet.write(page, said.noRelease(), Style.SMALL_BOLD, FormSheet.MARGIN, top + 4);
        String which = words.say("record.page", number, of);
        FormSheet.write(
                page, which, Style.SMALL_BOLD, right - sheet.wrapping().width(which, Style.SMALL_BOLD), top + 4);
        FormSheet.write(
                page,
                report.kept()
                        .map(kept -> words.say(
                                "report.foot",
                                report.tool(),
                                kept.asked().identifier(),
                                kept.drawnUp().by(),
                                RecordContext.time(kept.drawnUp().at()),
                                report.stands()))
                        .orElse(words.say("report.foot.not-kept", report.tool())),
                Style.SMALL,
                FormSheet.MARGIN,
                top + 4 + Style.SMALL.leading());
    }
}
