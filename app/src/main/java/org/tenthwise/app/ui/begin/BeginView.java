package org.tenthwise.app.ui.begin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.picture.OutlinePicture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The form to begin a run, beside the part it is for. */
public final class BeginView extends FormView {

    private static final double WIDTH = 400;
    private static final double HEIGHT = 150;
    /** Beside large text. */
    private static final double LESS = 60;

    public BeginView(BeginViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(
                words.say("begin.title"),
                model.form(),
                words,
                RunHeading.titled(words.say("begin.title"), words, navigator::back),
                model::load,
                Set.of(model.purpose()));
        about(part(model, words, pictures));
    }

    private static Region part(BeginViewModel model, Words words, PictureFrames pictures) {
        List<Region> rows = new ArrayList<>(List.of(Texts.label(model.plan().name(), "middling")));
        model.facts().forEach(fact -> rows.add(Texts.label(fact, "body", "second")));
        PagedRows pages = new PagedRows(words);
        HBox line = new HBox(ScreenSizes.GAP, drawn(model, pictures));
        line.setFillHeight(false);
        line.setMinHeight(USE_PREF_SIZE);
        pages.turnAt(line);
        pages.setMinHeight(0);
        pages.show(rows);
        VBox.setVgrow(pages, Priority.ALWAYS);
        Label asked = Texts.label("", "body", "second");
        asked.setId("asked");
        asked.textProperty().bind(model.askedProperty());
        asked.setMinHeight(USE_PREF_SIZE);
        Label notice = Texts.label("", "body", "bold");
        notice.setId("notice");
        notice.textProperty().bind(model.noticeProperty());
        notice.visibleProperty().bind(notice.textProperty().isNotEmpty());
        notice.managedProperty().bind(notice.visibleProperty());
        asked.visibleProperty()
                .bind(notice.visibleProperty()
                        .not()
                        .or(pictures.look().largeTextProperty().not()));
        asked.managedProperty().bind(asked.visibleProperty());
        return new VBox(8, Texts.label(model.part(), "title"), line, pages, asked, notice);
    }

    /** The part as far as its plan knows it. */
    private static Region drawn(BeginViewModel model, PictureFrames pictures) {
        double height = pictures.look().largeTextProperty().get() ? LESS : HEIGHT;
        Region drawn = model.plan()
                .outline()
                .<Region>map(outline -> pictures.framed(
                        OutlinePicture.small(
                                outline, Optional.empty(), model.plan().name()),
                        WIDTH,
                        height,
                        Role.PAPER))
                .orElseGet(Region::new);
        HBox.setHgrow(drawn, Priority.ALWAYS);
        return drawn;
    }
}
