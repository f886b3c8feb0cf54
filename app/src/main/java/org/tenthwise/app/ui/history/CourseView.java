package org.tenthwise.app.ui.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.export.SeriesViewFormat;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictMark;
import org.tenthwise.app.picture.chart.CapabilityPicture;
import org.tenthwise.app.picture.chart.CourseSheet;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.app.text.SeriesSentences;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Heading;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * The parts in the order made as a picture, which is touched; beside or below it what they show together, or the part
 * that was touched.
 */
public final class CourseView extends Screen {

    private static final double INDEX = 96;
    private static final double CHECK = 220;
    private static final double MARK = 28;

    private final CourseViewModel model;
    private final Words words;
    private final PictureFrames pictures;
    private final PictureView chart;
    private final Label about = Texts.label("", "middling", "second");
    private final PagedRows side;
    private final Key record;
    private final Key shows;
    private final Key earlier;
    private final Key later;
    private final Key size;
    private final Key across;
    private final BorderPane body = new BorderPane();
    private final VBox beside;
    private final HBox parts;
    private final HBox ways;
    private final VBox sheet;

    public CourseView(CourseViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(words.say("history.title"));
        this.model = model;
        this.words = words;
        this.pictures = pictures;
        chart = pictures.empty();
        chart.setId("course");
        chart.lookSmall(1, Role.SHEET);
        chart.setMinSize(ScreenSizes.KEY, ScreenSizes.KEY);
        chart.onTap(model::touch);
        VBox.setVgrow(chart, Priority.ALWAYS);
        side = new PagedRows(words, 4);
        VBox.setVgrow(side, Priority.ALWAYS);
        record = pressed("its-record", Key.Kind.COMMIT, words.say("history.record"), model::record);
        shows = pressed("shows", Key.Kind.PLAIN, words.say("history.shows"), model::showAll);
        HBox onward = new HBox(ScreenSizes.GAP, shows, record);
        onward.setMinHeight(USE_PREF_SIZE);
        beside = new VBox(ScreenSizes.GAP, side, onward);
        beside.getStyleClass().addAll("on-paper", "form-side");
        onward.managedProperty().bind(onward.visibleProperty());
        earlier = pressed("part-before", Key.Kind.PLAIN, words.say("history.earlier"), model::earlier);
        later = pressed("next-part", Key.Kind.PLAIN, words.say("history.later"), model::later);
        size = pressed("size", Key.Kind.PLAIN, "", model::changeSize);
        across = pressed("across", Key.Kind.PLAIN, "", model::changeAcross);
        parts = row(earlier, later);
        ways = row(size, across);
        sheet = new VBox(ScreenSizes.GAP, heading(), chart);
        sheet.getStyleClass().addAll("on-sheet", "form-panel");
        Heading heading = RunHeading.titled(title(), words, navigator::back)
                .cell(words.say("history.sought"), new SimpleStringProperty(model.sought()));
        for (SeriesViewFormat as : model.formats()) {
            String name = as.extension().toUpperCase(Locale.ROOT);
            Key key = Key.onward("hand-" + as.extension(), name, () -> model.hand(as));
            key.speak(words.say("sheet.hand", name));
            heading.end(key);
        }
        setTop(heading);
        setCenter(body);
        body.setCenter(sheet);
        owns(model.stateProperty().subscribe(now -> show()));
        owns(model.cardProperty().subscribe(now -> {
            onward.setVisible(now.isPresent());
            show();
        }));
    }

    private HBox heading() {
        Label number = Texts.label(model.number(), "title", "accent");
        number.setMinWidth(USE_PREF_SIZE);
        Label name = Texts.label(model.name(), "title");
        name.setId("characteristic");
        HBox.setHgrow(name, Priority.SOMETIMES);
        about.setMinWidth(USE_PREF_SIZE);
        HBox line = new HBox(16, number, name, about);
        line.setAlignment(Pos.BASELINE_LEFT);
        line.setMinHeight(USE_PREF_SIZE);
        return line;
    }

    private static HBox row(Key... keys) {
        HBox row = new HBox(ScreenSizes.GAP, keys);
        row.setMinHeight(USE_PREF_SIZE);
        HBox.setHgrow(row, Priority.ALWAYS);
        return row;
    }

    private static Key pressed(String id, Key.Kind kind, String text, Runnable press) {
        Key key = new Key(kind, text, press).shared();
        key.setId(id);
        key.setMinHeight(ScreenSizes.PAGE_KEY);
        return key;
    }

    @Override
    public void onShown() {
        model.load();
    }

    @Override
    public void arrange(Arrangement arrangement) {
        boolean wide = arrangement == Arrangement.LANDSCAPE;
        boolean large = pictures.look().largeTextProperty().get();
        double width = large ? ScreenSizes.COURSE_SIDE_LARGE : ScreenSizes.COURSE_SIDE;
        beside.getStyleClass().removeAll("lined-left", "lined-above");
        beside.getStyleClass().add(wide ? "lined-left" : "lined-above");
        beside.setMinWidth(wide ? width : 0);
        beside.setPrefWidth(wide ? width : USE_COMPUTED_SIZE);
        beside.setMaxWidth(wide ? width : Double.MAX_VALUE);
        beside.setMinHeight(0);
        beside.setPrefHeight(wide ? USE_COMPUTED_SIZE : ScreenSizes.COURSE_BELOW);
        body.setRight(wide ? beside : null);
        body.setBottom(wide ? null : beside);
        Pane foot = wide ? new HBox(ScreenSizes.GAP, parts, ways) : new VBox(ScreenSizes.GAP, parts, ways);
        foot.setMinHeight(USE_PREF_SIZE);
        sheet.getChildren().setAll(sheet.getChildren().get(0), chart, foot);
        show();
    }

    private void show() {
        earlier.setDisable(!model.hasEarlier());
        later.setDisable(!model.hasLater());
        size.setText(words.say("history.show", model.of() == SizeOf.AS_CUT ? SizeOf.FINAL : SizeOf.AS_CUT));
        across.setText(words.say(model.isAcross() ? "history.across.stop" : "history.across.go"));
        across.setDisable(!model.isAcross() && !model.hasBreaks());
        Optional<CourseSheet> state = model.stateProperty().get();
        if (state.isEmpty()) {
            side.show(List.of(Texts.label(words.say("history.reading"), "middling")));
            return;
        }
        CourseSheet now = state.get();
        chart.show(now.picture());
        about.setText(model.count());
        side.show(model.cardProperty().get().map(this::card).orElseGet(() -> told(now)));
    }

    private List<Region> told(CourseSheet now) {
        List<Region> rows = new ArrayList<>();
        if (!now.since().isEmpty()) {
            rows.add(Texts.label(now.since(), "middling", "bold"));
        }
        String before = "";
        int drawn = 0;
        for (SeriesSentences.Told told : now.told()) {
            Region sentence = sentence(told);
            rows.add(told.head().equals(before) ? sentence : new VBox(2, head(told.head()), sentence));
            before = told.head();
            if (told.about() == SeriesSentences.About.CAPABILITY) {
                now.capability().get(drawn++).map(this::index).ifPresent(rows::add);
            }
        }
        if (!now.leftOut().isEmpty()) {
            rows.add(head(words.say("history.left-out")));
            now.leftOut().forEach(out -> rows.add(Texts.label(out, "body")));
        }
        return rows;
    }

    /** What speaks against the parts has the mark of it, and is said in bold. */
    private Region sentence(SeriesSentences.Told told) {
        return switch (told.weight()) {
            case PLAIN -> Texts.label(told.sentence(), "middling");
            case STRONG -> Texts.label(told.sentence(), "middling", "bold");
            case AGAINST -> {
                Label said = Texts.label(told.sentence(), "middling", "bold");
                HBox.setHgrow(said, Priority.ALWAYS);
                Region mark =
                        pictures.fixed(new VerdictMark(VerdictKind.FAIL, told.sentence()), MARK, MARK, Role.PAPER);
                HBox line = new HBox(10, mark, said);
                line.setAlignment(Pos.TOP_LEFT);
                yield line;
            }
        };
    }

    private PictureView index(CapabilityPicture capability) {
        PictureView index = pictures.framed(
                capability,
                ScreenSizes.COURSE_SIDE - 40,
                INDEX * pictures.look().textScale(),
                Role.PAPER);
        index.setMinHeight(USE_PREF_SIZE);
        return index;
    }

    private static Label head(String text) {
        Label head = Texts.label(text, "body", "second");
        head.setPadding(new Insets(ScreenSizes.GAP, 0, 0, 0));
        return head;
    }

    private List<Region> card(PartCard card) {
        List<Region> rows = new ArrayList<>();
        rows.add(Texts.label(card.title(), "middling", "second"));
        Label size = Texts.label(card.size(), "title");
        size.setId("size-touched");
        rows.add(size);
        HBox verdict = new HBox(
                10,
                pictures.fixed(new VerdictMark(card.verdict(), card.word()), MARK, MARK, Role.PAPER),
                Texts.label(card.word(), "strong", Texts.style(card.verdict())));
        verdict.setAlignment(Pos.CENTER_LEFT);
        rows.add(verdict);
        card.about().forEach(line -> rows.add(Texts.label(line, "body")));
        card.picture()
                .ifPresent(
                        picture -> rows.add(pictures.small(picture, ScreenSizes.COURSE_SIDE - 40, CHECK, Role.PAPER)));
        return rows;
    }
}
