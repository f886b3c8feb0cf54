package org.tenthwise.app.demo;

import org.tenthwise.model.words.Words;

/** Types on the keys of the screen: figures on the pad, words on the letters. */
final class Typist {

    private final KeyPresser finger;
    private final Words words;

    Typist(KeyPresser finger, Words words) {
        this.finger = finger;
        this.words = words;
    }

    /** A figure on the pad; a leading plus says nothing and is left out. */
    void figure(String figure) {
        for (char sign : figure.toCharArray()) {
            switch (sign) {
                case '+' -> {}
                case '-' -> finger.press("sign");
                case '.' -> finger.press("point");
                default -> finger.press("digit-" + sign);
            }
        }
    }

    /** Answers the field in hand of a form in words. */
    void answer(String text) {
        if (finger.sees("type")) {
            finger.press("type");
        }
        for (int i = 0; i < text.length(); i++) {
            letter(text.substring(i, i + 1));
        }
        if (!finger.reads("typed").equals(text)) {
            throw new IllegalStateException(
                    "\"%s\" was typed, and \"%s\" can be read".formatted(text, finger.reads("typed")));
        }
        finger.press("commit");
    }

    private void letter(String letter) {
        String spoken =
                switch (letter) {
                    case " " -> words.say("letters.space");
                    case "-" -> words.say("letters.hyphen");
                    case "/" -> words.say("letters.slash");
                    case "." -> words.say("letters.full-stop");
                    case "," -> words.say("letters.comma");
                    default -> letter;
                };
        if (!finger.seesSpoken(spoken)) {
            finger.pressSpoken(words.say("letters.shift"));
        }
        finger.pressSpoken(spoken);
    }
}
