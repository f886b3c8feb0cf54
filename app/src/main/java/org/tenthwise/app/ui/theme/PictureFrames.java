package org.tenthwise.app.ui.theme;

import java.util.ArrayList;
import java.util.List;
import javafx.util.Subscription;
import org.tenthwise.app.picture.Palette;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.TextMetrics;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.picture.ScreenFaces;

/**
 * Frames pictures: colours by day and night, lettering at the text size set, as the look has them now and as it
 * changes.
 */
public final class PictureFrames {

    private final ScreenFaces faces;
    private final TextMetrics lettering;
    private final Look look;

    public PictureFrames(ScreenFaces faces, TextMetrics lettering, Look look) {
        this.faces = faces;
        this.lettering = lettering;
        this.look = look;
    }

    /** The look the pictures follow. */
    public Look look() {
        return look;
    }

    /** A view with nothing on it yet. It follows the look for as long as it is part of a scene. */
    public PictureView empty() {
        PictureView view = new PictureView(faces, lettering);
        List<Subscription> following = new ArrayList<>();
        view.sceneProperty().subscribe(scene -> {
            following.forEach(Subscription::unsubscribe);
            following.clear();
            if (scene != null) {
                following.add(look.nightProperty().subscribe(night -> dress(view)));
                following.add(look.largeTextProperty().subscribe(large -> dress(view)));
            }
        });
        return view;
    }

    /** An empty view of a fixed size. */
    public PictureView empty(double width, double height) {
        PictureView view = empty();
        view.setMinSize(width, height);
        view.setPrefSize(width, height);
        view.setMaxSize(width, height);
        return view;
    }

    /** @param ground what lies under the picture */
    public PictureView framed(Picture picture, double width, double height, Role ground) {
        return framed(picture, width, height, 1, ground);
    }

    /** For a list: thinner lines. */
    public PictureView small(Picture picture, double width, double height, Role ground) {
        return framed(picture, width, height, 0.75, ground);
    }

    /** The same, and never smaller or larger. */
    public PictureView fixed(Picture picture, double width, double height, Role ground) {
        PictureView view = small(picture, width, height, ground);
        view.setMinSize(width, height);
        view.setMaxSize(width, height);
        return view;
    }

    private PictureView framed(Picture picture, double width, double height, double lines, Role ground) {
        PictureView view = empty();
        view.lookSmall(lines, ground);
        view.setMinSize(Math.min(width, 64), Math.min(height, 64));
        view.setPrefSize(width, height);
        view.show(picture);
        return view;
    }

    private void dress(PictureView view) {
        view.look(look.nightProperty().get() ? Palette.NIGHT : Palette.DAY, look.textScale());
    }
}
