package org.tenthwise.app.ui.plan;

import org.tenthwise.app.picture.Role;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.model.words.Words;

/** The two profiles to be typed, and the part as far as it is over them. */
public final class OutlineView extends FormView {

    private static final double LEAST = 64;

    public OutlineView(OutlineViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(
                words.say("planning.outline"),
                model.form(),
                words,
                RunHeading.titled(words.say("planning.outline"), words, navigator::back),
                () -> {});
        PictureView part = pictures.empty();
        part.setId("outline-drawn");
        part.lookSmall(1, Role.PAPER);
        part.setMinSize(LEAST, LEAST);
        owns(model.drawnProperty().subscribe(drawn -> drawn.ifPresentOrElse(part::show, part::clear)));
        about(part);
    }
}
