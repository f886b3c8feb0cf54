package org.tenthwise.app.ui.guide;

import java.util.Arrays;
import java.util.List;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Pictures;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.RunScreenSketch;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.guide.GuideViewModel.GuidePage;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.SidedScreen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** A page at a time: what there is to say on the one side, and what it is about on the other. */
public final class GuideView extends SidedScreen {

    private static final double GAP = 12;
    /** Pictures take what room there is. */
    private static final double AS_LARGE_AS = 640;

    private final GuideViewModel model;
    private final Words words;
    private final PictureFrames pictures;
    private final VBox side = new VBox(GAP);
    private final HBox foot = new HBox(ScreenSizes.GAP);

    public GuideView(GuideViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(words.say("guide.title"));
        this.model = model;
        this.words = words;
        this.pictures = pictures;
        side.getStyleClass().addAll("on-paper", "form-panel");
        foot.getStyleClass().addAll("on-paper", "lined-above", "home-foot");
        foot.setMinHeight(USE_PREF_SIZE);
        lay(
                RunHeading.titled(title(), words, navigator::back)
                        .end(Key.onward("leave", words.say("guide.leave"), navigator::back)),
                side,
                ScreenSizes.ABOUT_SIDE,
                ScreenSizes.ABOUT_SIDE);
        setBottom(foot);
        owns(model.pageProperty().subscribe(this::show));
        owns(model.offeredProperty().subscribe(() -> show(model.pageProperty().get())));
        owns(model.namesProperty().subscribe(() -> show(model.pageProperty().get())));
        owns(model::left);
    }

    @Override
    public void onShown() {
        model.load();
    }

    private void show(GuidePage page) {
        PagedRows said = paged(model.said(page).stream()
                .map(paragraph -> (Region) Texts.label(paragraph, "middling"))
                .toList());
        side.getChildren().setAll(Texts.label(words.say("guide", page), "heading"), said);
        Region beside =
                switch (page) {
                    case PLANS ->
                        paged(Arrays.stream(SmallPlan.text().split("\n\n"))
                                .map(block -> (Region) Texts.label(block.strip(), "body"))
                                .toList());
                    case PART ->
                        new Pictures(words).part(model.demo()).map(this::framed).orElseGet(StackPane::new);
                    case KEYS -> framed(new RunScreenSketch(words.say("guide.keys.spoken")));
                    case NAMES ->
                        paged(model.namesProperty().get().stream()
                                .map(name -> (Region) Texts.label(name, "strong"))
                                .toList());
                };
        StackPane sheet = new StackPane(beside);
        sheet.getStyleClass().addAll("on-sheet", "form-panel");
        sheet.setMinSize(0, 0);
        rest(sheet);
        Key before = key(Key.Kind.PLAIN, "guide-before", words.say("guide.before"), model::goBack);
        before.setDisable(model.isFirst());
        foot.getChildren().setAll(before);
        foot.getChildren().addAll(own(page));
        foot.getChildren()
                .add(key(
                        Key.Kind.COMMIT,
                        "guide-next",
                        words.say(model.isLast() ? "guide.done" : "ask.next"),
                        model::goOn));
    }

    /** What can be done on a page beside turning it. */
    private List<Key> own(GuidePage page) {
        return switch (page) {
            case PLANS -> List.of(key(Key.Kind.PLAIN, "about", words.say("about.title"), model::about));
            case PART -> {
                Key begin = key(
                        Key.Kind.PLAIN,
                        "guide-begin",
                        words.say("guide.begin", model.demo().part().number()),
                        model::begin);
                begin.setDisable(!model.offeredProperty().get());
                yield List.of(begin);
            }
            case KEYS -> List.of(key(Key.Kind.PLAIN, "cautions", words.say("about.cautions"), model::about));
            case NAMES ->
                List.of(
                        key(
                                Key.Kind.PLAIN,
                                "name-machine",
                                words.say("settings.name-machine"),
                                () -> model.name(ShopNames.Kind.MACHINE)),
                        key(
                                Key.Kind.PLAIN,
                                "name-person",
                                words.say("settings.name-person"),
                                () -> model.name(ShopNames.Kind.PERSON)));
        };
    }

    private Region framed(Picture picture) {
        return pictures.framed(picture, AS_LARGE_AS, AS_LARGE_AS, Role.SHEET);
    }

    private PagedRows paged(List<Region> rows) {
        PagedRows pages = new PagedRows(words, GAP);
        pages.setMinHeight(0);
        VBox.setVgrow(pages, Priority.ALWAYS);
        pages.show(rows);
        return pages;
    }

    private static Key key(Key.Kind kind, String id, String text, Runnable press) {
        Key key = new Key(kind, text, press);
        key.setId(id);
        key.getStyleClass().add("form-lead");
        return key.shared();
    }
}
