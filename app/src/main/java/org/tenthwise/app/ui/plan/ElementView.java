package org.tenthwise.app.ui.plan;

import org.tenthwise.app.picture.Role;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.model.words.Words;

/** The figures of an element to be typed, and the part with it over them. */
public final class ElementView extends FormView {

    public ElementView(ElementViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(
                words.say("planning.element"),
                model.form(),
                words,
                RunHeading.titled(words.say("planning.element"), words, navigator::back),
                () -> {});
        PictureView part = pictures.empty();
        part.setId("outline-drawn");
        part.lookSmall(1, Role.PAPER);
        part.setMinSize(ScreenSizes.KEY, ScreenSizes.KEY);
        owns(model.drawnProperty().subscribe(drawn -> drawn.ifPresentOrElse(part::show, part::clear)));
        about(part);
    }
}
