package org.tenthwise.app.ui.run;

/** A finger on the keys of the run screen. */
final class Finger {

    private Finger() {}

    /** {@code -} is the sign key, {@code <} takes a character back, {@code C} clears, a line feed takes the figure. */
    static void presses(RunViewModel model, String keys) {
        for (char key : keys.toCharArray()) {
            switch (key) {
                case '-' -> model.sign();
                case '<' -> model.takeBack();
                case 'C' -> model.clear();
                case '\n' -> model.press();
                default -> model.touched(Character.toString(key));
            }
        }
    }
}
