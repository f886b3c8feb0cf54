package org.tenthwise.app.ui.workplace;

import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.theme.PictureFrames;

/** The middle of a workplace: what it is about, the picture drawn from the numbers, and what comes of them. */
public final class PictureSheet extends VBox {

    /** Of the width. */
    private static final double WORDS_BESIDE = 0.5;

    private static final Insets OF_THE_PICTURE = new Insets(4, 12, 8, 16);

    private final PictureView picture;
    private final HBox middle;

    /**
     * @param least the picture is as high as that at least, and takes what room there is
     * @param below what comes of the numbers
     */
    public PictureSheet(PictureFrames pictures, double least, Region below, Node... above) {
        getStyleClass().addAll("step-sheet", "on-sheet");
        VBox top = new VBox(2, above);
        top.getStyleClass().add("sheet-top");
        top.setMinHeight(USE_PREF_SIZE);
        picture = pictures.empty();
        picture.setMinHeight(least);
        middle = new HBox(picture);
        HBox.setHgrow(picture, Priority.ALWAYS);
        HBox.setMargin(picture, OF_THE_PICTURE);
        VBox.setVgrow(middle, Priority.ALWAYS);
        below.getStyleClass().add("lined-above");
        getChildren().addAll(top, middle, below);
    }

    /** Puts {@code words} beside the picture. */
    public void beside(Optional<Region> words) {
        middle.getChildren().removeIf(node -> node != picture);
        words.ifPresent(region -> {
            region.setMinWidth(USE_PREF_SIZE);
            region.prefWidthProperty().bind(middle.widthProperty().multiply(WORDS_BESIDE));
            middle.getChildren().add(region);
        });
    }

    public void draw(Optional<Picture> drawn) {
        drawn.ifPresentOrElse(picture::show, picture::clear);
    }
}
