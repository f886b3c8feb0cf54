package org.tenthwise.app.device;

/** The display the client is shown on. Asked on the screen thread. */
public interface Display {

    /** Width and height of a window, in the screen's own units, both more than zero. */
    record Size(double width, double height) {

        /** A tablet of ten inches, held across. */
        public static final Size TABLET = new Size(1280, 800);
    }

    /** Size the client opens with. */
    Size window();

    /** Whether the client is alone on the display, as on a tablet, and fills it. */
    boolean whole();

    /** A window of a tablet's size, whatever the display. */
    static Display plain() {
        return new Display() {
            @Override
            public Size window() {
                return Size.TABLET;
            }

            @Override
            public boolean whole() {
                return false;
            }
        };
    }
}
