package org.tenthwise.app.ui.theme;

import org.tenthwise.app.picture.Lettering;
import org.tenthwise.app.picture.Palette;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.picture.ScreenFaces;

/** Frames pictures in the look of the moment. A screen on which the look can change frames its pictures anew when it does. */
public final class Pictures {

    private final ScreenFaces faces;
    private final Lettering lettering;
    private final Look look;

    public Pictures(ScreenFaces faces, Lettering lettering, Look look) {
        this.faces = faces;
        this.lettering = lettering;
        this.look = look;
    }

    /** @param ground what lies under the picture */
    public PictureView framed(Picture picture, double width, double height, Role ground) {
        return framed(picture, width, height, 1, ground);
    }

    /** For a list: thinner lines. */
    public PictureView small(Picture picture, double width, double height, Role ground) {
        return framed(picture, width, height, 0.75, ground);
    }

    private PictureView framed(Picture picture, double width, double height, double lines, Role ground) {
        PictureView view = new PictureView(faces, lettering);
        view.look(look.nightProperty().get() ? Palette.NIGHT : Palette.DAY, look.textScale());
        view.lookSmall(lines, ground);
        view.setMinSize(Math.min(width, 64), Math.min(height, 64));
        view.setPrefSize(width, height);
        view.show(picture);
        return view;
    }
}
