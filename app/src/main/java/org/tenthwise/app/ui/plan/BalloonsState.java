package org.tenthwise.app.ui.plan;

import org.tenthwise.app.drawing.PageImage;
import org.tenthwise.app.drawing.PagePart;
import org.tenthwise.app.picture.Picture;

/** What the screen of the balloons shows of the drawing at one moment. */
sealed interface BalloonsState {

    /** No page: it is still being drawn, or why there is none. */
    record Without(String sentence) implements BalloonsState {}

    /**
     * @param balloons laid out over the part that is seen
     * @param said which page of how many
     * @param before whether there is a page before it
     * @param after whether there is a page after it
     */
    record Seen(PageImage image, PagePart part, Picture balloons, String said, boolean before, boolean after)
            implements BalloonsState {}
}
