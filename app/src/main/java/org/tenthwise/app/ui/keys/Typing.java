package org.tenthwise.app.ui.keys;

/**
 * Takes what comes from a hardware keyboard, or from a gauge on a cable that types its figure and ends it with Enter. The
 * shell feeds the one of the screen in hand.
 */
public interface Typing {

    /** @param character one printable character as the keyboard sent it */
    void character(String character);

    void takeBack();

    /** Whether words are being typed, in which a space is a space. */
    default boolean takesWords() {
        return false;
    }

    void enter();

    /** For a screen that takes no typing. */
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
