package org.tenthwise.app.ui.history;

import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.export.SeriesViewFormat;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.chart.ShareBand;
import org.tenthwise.app.picture.chart.SharePicture;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.history.CharacteristicsViewModel.Chip;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Word;
import org.tenthwise.model.words.Words;

/** Every characteristic on one scale from limit to limit, a row each; a row leads to its parts. */
public final class CharacteristicsView extends Screen {

    private static final double BAND = 56;
    private static final double HEAD = 30;

    private final CharacteristicsViewModel model;
    private final Words words;
    private final PictureFrames pictures;
    private final FlowPane chips = new FlowPane(ScreenSizes.GAP, ScreenSizes.GAP);
    private final PagedRows rows;
    private final HBox head;
    private final HBox foot = new HBox(ScreenSizes.GAP);

    public CharacteristicsView(
            CharacteristicsViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(words.say("history.title"));
        this.model = model;
        this.words = words;
        this.pictures = pictures;
        rows = new PagedRows(words);
        rows.setMinHeight(0);
        VBox.setVgrow(rows, Priority.ALWAYS);
        PictureView scale = pictures.framed(model.head(), ScreenSizes.SHARE, HEAD, Role.SHEET);
        Label sizes = Texts.label(words.say("history.size", model.of()), "body", "second");
        sizes.setId("sizes");
        sizes.setMinWidth(0);
        sizes.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(sizes, Priority.ALWAYS);
        head = new HBox(sizes, scale);
        HBox.setHgrow(scale, Priority.ALWAYS);
        head.setAlignment(Pos.CENTER_RIGHT);
        scale.maxWidthProperty().bind(head.widthProperty().multiply(CharacteristicRow.BAND));
        scale.setMaxHeight(Region.USE_PREF_SIZE);
        double high = HEAD * pictures.look().textScale();
        scale.setMinHeight(high);
        scale.setPrefHeight(high);
        chips.setId("chips");
        VBox sheet = new VBox(ScreenSizes.GAP, chips, head, rows, foot());
        sheet.getStyleClass().addAll("on-sheet", "form-panel");
        setTop(RunHeading.titled(title(), words, navigator::back)
                .end(Key.onward("find", words.say("history.find"), model::ask)));
        setCenter(sheet);
        owns(model.foundProperty().subscribe(now -> show()));
    }

    private HBox foot() {
        foot.getChildren()
                .add(foot(
                        "deviations",
                        words.say("history.deviations"),
                        words.say("history.deviations"),
                        model::deviations));
        for (SeriesViewFormat as : model.formats()) {
            String name = as.extension().toUpperCase(Locale.ROOT);
            foot.getChildren()
                    .add(foot("hand-" + as.extension(), name, words.say("sheet.hand", name), () -> model.hand(as)));
        }
        foot.setMinHeight(USE_PREF_SIZE);
        return foot;
    }

    private static Key foot(String id, String text, String spoken, Runnable press) {
        Key key = new Key(Key.Kind.PLAIN, text, press).shared();
        key.setId(id);
        key.setMinHeight(ScreenSizes.PAGE_KEY);
        key.speak(spoken);
        return key;
    }

    public CharacteristicsViewModel model() {
        return model;
    }

    private void show() {
        chips.getChildren().setAll(model.chips().stream().map(this::chip).toList());
        int count = model.foundProperty().get().series().size();
        head.setVisible(count > 0);
        head.setManaged(count > 0);
        foot.setDisable(count == 0);
        if (count == 0) {
            rows.show(1, place -> Texts.label(model.none(), "middling"));
        } else {
            rows.show(count, this::row);
        }
    }

    private Key chip(Chip chip) {
        Key key = Key.onward(
                "chip-" + Word.of(chip.by()), words.say("history.chip.key", chip.text()), () -> model.drop(chip.by()));
        key.speak(chip.spoken());
        return key;
    }

    private Key row(int place) {
        SharePicture.ShareRow row = model.row(place);
        Label number = Texts.label(row.number(), "heading", "accent");
        number.setMinWidth(USE_PREF_SIZE);
        VBox names = new VBox(
                Texts.label(words.readable(row.name()), "middling", "bold"),
                Texts.label(words.readable((model.partOf(place) + " " + row.note()).strip()), "body", "second"));
        names.setMinWidth(0);
        HBox.setHgrow(names, Priority.ALWAYS);
        HBox left = new HBox(14, number, names);
        left.setAlignment(Pos.CENTER_LEFT);
        PictureView band = pictures.framed(new ShareBand(row, row.note()), ScreenSizes.SHARE, BAND, Role.SHEET);
        Key key = new Key(Key.Kind.PLAIN, new CharacteristicRow(left, band), () -> model.open(place));
        key.setId("characteristic-" + place);
        key.getStyleClass().addAll("row", "form-field");
        key.setMinHeight(ScreenSizes.CHOICE_KEY);
        key.speak(words.spoken(row.number(), row.name(), row.note()));
        return key;
    }

    @Override
    public void onShown() {
        model.load();
    }

    @Override
    public void arrange(Arrangement arrangement) {
        // one list fills the screen either way
    }
}
