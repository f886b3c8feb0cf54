package org.tenthwise.app.picture;

/** Something that can be drawn from numbers at any size. */
public interface Picture {

    /** Lays the picture out in the drawing's frame and draws it. */
    void draw(Drawing drawing);

    /** Whether it shows more than one size between its limits, which a figure says as well. */
    default boolean isMoreThanOneSize() {
        return true;
    }

    /** What the picture shows, for those who listen to it. */
    String spoken();
}
