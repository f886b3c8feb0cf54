package org.tenthwise.app.ui.workplace;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.text.ToDo;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.theme.PictureFrames;

/** The middle of a workplace: what it is about, the picture drawn from the numbers, and what comes of them. */
public final class PictureSheet extends VBox {

    private final PictureView picture;
    private final PictureAndMoves middle;

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
        middle = new PictureAndMoves(picture, pictures.look());
        VBox.setVgrow(middle, Priority.ALWAYS);
        below.getStyleClass().add("lined-above");
        getChildren().addAll(top, middle, below);
    }

    /** @param moves what to do at what the picture shows, to stand with it; nothing, and it has the room to itself */
    public void moves(ToDo moves) {
        middle.show(moves);
    }

    public void draw(Optional<Picture> drawn) {
        drawn.ifPresentOrElse(picture::show, picture::clear);
    }
}
