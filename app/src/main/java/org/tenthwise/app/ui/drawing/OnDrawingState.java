package org.tenthwise.app.ui.drawing;

import org.tenthwise.app.drawing.PageImage;
import org.tenthwise.app.drawing.PagePart;
import org.tenthwise.app.picture.Picture;

/** What is shown of the drawing at one moment. */
sealed interface OnDrawingState {

    /** No page: it is still being drawn, or why there is none. */
    record Without(String sentence) implements OnDrawingState {}

    /** @param balloon laid out over the part that is seen */
    record Seen(PageImage image, PagePart part, Picture balloon) implements OnDrawingState {}
}
