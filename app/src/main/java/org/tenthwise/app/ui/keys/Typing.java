package org.tenthwise.app.ui.keys;

/**
 * Takes what comes from a hardware keyboard, or from a gauge on a cable that types its figure and ends it with Enter.
 * The shell feeds the one of the screen in hand.
 */
public interface Typing {

    /** @param character one printable character as the keyboard sent it */
    void character(String character);

    /** @param character a digit or the point, by a key of the screen */
    default void touched(String character) {
        character(character);
    }

    void takeBack();

    void enter();

    /** Something comes between: hands out what is half typed, which then is not here any more. */
    default String interrupted() {
        return "";
    }

    /** For a screen that takes no typing; whoever feeds it tells that nothing was taken. */
    Typing NONE = new Typing() {
        @Override
        public void character(String character) {
            // nothing is typed here
        }

        @Override
        public void takeBack() {
            // nothing is typed here
        }

        @Override
        public void enter() {
            // nothing is typed here
        }
    };
}
