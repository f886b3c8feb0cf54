package org.tenthwise.app.ui.pages;

import org.tenthwise.app.picture.Picture;

/** What the screen of the pages shows at one moment. */
public sealed interface PagesState {

    /** The record is still being laid out. */
    record Waiting(String sentence) implements PagesState {}

    /**
     * @param said which page of how many
     * @param before whether there is something before it
     * @param after whether there is something after it
     * @param size what the key for the size reads
     * @param resizes whether another size shows anything else
     */
    record Shown(Picture picture, String said, boolean before, boolean after, String size, boolean resizes)
            implements PagesState {}
}
