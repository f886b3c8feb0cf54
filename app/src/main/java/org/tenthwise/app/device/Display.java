package org.tenthwise.app.device;

/** The display the client is shown on. Asked on the screen thread. */
public interface Display {

    /** Width and height of a window, in the screen's own units, both more than nought. */
    record Size(double width, double height) {
    }

    /** Size the client opens with. */
    Size window();

    /** Whether the client is alone on the display, as on a tablet, and fills it. */
    boolean whole();
}
