package org.tenthwise.app.ui.article;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.firstarticle.ArticleReport;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictMark;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.SidedScreen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** What a report comes to and why it is not complete on the one side, its characteristics on the other. */
public final class ReportView extends SidedScreen {

    private static final double MARK = 22;

    private final ReportViewModel model;
    private final Words words;
    private final PictureFrames pictures;
    private final PagedRows said;
    private final PagedRows table;

    public ReportView(ReportViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(model.title());
        this.model = model;
        this.words = words;
        this.pictures = pictures;
        said = new PagedRows(words, 10);
        table = new PagedRows(words);
        VBox side = new VBox(said);
        VBox.setVgrow(said, Priority.ALWAYS);
        side.getStyleClass().addAll("on-paper", "form-side");
        VBox right = new VBox(ScreenSizes.GAP, table, foot());
        VBox.setVgrow(table, Priority.ALWAYS);
        right.getStyleClass().addAll("on-sheet", "form-panel");
        rest(right);
        lay(
                RunHeading.titled(title(), words, navigator::back)
                        .end(Key.onward("sign-report", words.say("sign.act"), model::sign)),
                side,
                ScreenSizes.RECORD_SIDE,
                ScreenSizes.RECORD_ABOVE);
        owns(model.reportProperty().subscribe(found -> found.ifPresent(this::show)));
        owns(model.writtenProperty()
                .subscribe(file -> model.reportProperty().get().ifPresent(this::tell)));
    }

    private HBox foot() {
        HBox keys = new HBox(ScreenSizes.GAP);
        model.formats().forEach(format -> {
            Key key = new Key(Key.Kind.PLAIN, words.say("report.write." + format), () -> model.write(format));
            key.setId("write-" + format);
            key.disableProperty().bind(model.busyProperty());
            keys.getChildren().add(key.shared());
        });
        return keys;
    }

    private void show(ArticleReport report) {
        tell(report);
        table.show(model.rows(report).stream().map(this::row).toList());
    }

    private void tell(ArticleReport report) {
        List<Region> lines = new ArrayList<>();
        lines.add(Texts.label(model.state(report), "strong"));
        if (!model.writtenProperty().get().isEmpty()) {
            lines.add(Texts.label(model.writtenProperty().get(), "body", "bold"));
        }
        model.said(report).forEach(line -> lines.add(Texts.label(line, "body")));
        model.facts(report).forEach(line -> lines.add(Texts.label(line, "body", "second")));
        said.show(lines);
    }

    private Region row(ReportViewModel.FoundRow row) {
        VBox what = new VBox(
                Texts.label(words.readable(row.requirement()), "body", "bold"), Texts.label(row.results(), "body"));
        HBox.setHgrow(what, Priority.ALWAYS);
        HBox judged = new HBox(
                8,
                pictures.fixed(new VerdictMark(row.standing(), row.verdict()), MARK, MARK, Role.SHEET),
                Texts.label(row.verdict(), "body", "bold", Texts.style(row.standing())));
        judged.setAlignment(Pos.CENTER_LEFT);
        judged.getStyleClass().addAll("record-verdict", "upright");
        Region number = Texts.label(row.number(), "body", "bold");
        number.getStyleClass().add("record-number");
        HBox whole = new HBox(12, number, what, judged);
        whole.setAlignment(Pos.CENTER_LEFT);
        whole.getStyleClass().addAll("ruled-below", "record-row");
        return whole;
    }

    @Override
    public void onShown() {
        model.load();
    }

    @Override
    protected void arranged() {
        model.reportProperty().get().ifPresent(this::show);
    }
}
