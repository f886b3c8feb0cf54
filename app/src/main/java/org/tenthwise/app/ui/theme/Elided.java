package org.tenthwise.app.ui.theme;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import javafx.scene.control.Label;
import javafx.scene.text.Text;

/**
 * One line of words, cut where there is no room for all of them: the last of those without a figure go first, with an
 * ellipsis in their place. A figure is never cut; a name with figures in it, alone and too long, is.
 */
public final class Elided extends Label {

    private static final String CUT = "…";

    private final BiFunction<String, Predicate<String>, String> cutting;
    private String whole = "";

    public Elided(String... styles) {
        this(Elided::fitted, styles);
    }

    private Elided(BiFunction<String, Predicate<String>, String> cutting, String... styles) {
        this.cutting = cutting;
        getStyleClass().addAll(styles);
        setMinWidth(0);
        setMaxWidth(Double.MAX_VALUE);
        widthProperty().subscribe(width -> fit());
        fontProperty().subscribe(font -> fit());
    }

    /** Of several figures, cut at their beginning: the last are seen. */
    public static Elided toTheLast(String... styles) {
        return new Elided(Elided::fittedToTheLast, styles);
    }

    public void show(String text) {
        whole = text;
        fit();
    }

    /** How wide it is with nothing left out. */
    public double wholeWidth() {
        Text line = new Text(whole);
        line.setFont(getFont());
        return Math.ceil(line.getLayoutBounds().getWidth()) + 1;
    }

    private void fit() {
        setText(getWidth() <= 0 ? whole : cutting.apply(whole, this::fits));
    }

    private boolean fits(String text) {
        Text line = new Text(text);
        line.setFont(getFont());
        return line.getLayoutBounds().getWidth() <= getWidth();
    }

    /** The width is that of the place, not of the words. */
    @Override
    protected double computePrefWidth(double height) {
        return 0;
    }

    /** @param fits whether there is room for a text */
    static String fitted(String text, Predicate<String> fits) {
        List<String> words = new ArrayList<>(List.of(text.split(" ")));
        String shown = text;
        while (!fits.test(shown)) {
            int goes = nextToGo(words);
            if (goes < 0 || words.stream().filter(word -> !word.equals(CUT)).count() == 1) {
                return firstWord(text.split(" ")[0], fits);
            }
            words.set(goes, CUT);
            shown = joined(words);
        }
        return shown;
    }

    /** @param fits whether there is room for a text */
    static String fittedToTheLast(String text, Predicate<String> fits) {
        String shown = text;
        String left = text;
        while (!fits.test(shown) && left.contains(" ")) {
            left = left.substring(left.indexOf(' ') + 1);
            shown = CUT + " " + left;
        }
        return shown;
    }

    /**
     * The last without a figure, then the first, at last one between two figures; a figure goes only as a whole, and
     * only if none but figures are left.
     */
    private static int nextToGo(List<String> words) {
        int between = -1;
        int figure = -1;
        for (int i = words.size() - 1; i >= 0; i--) {
            if (words.get(i).equals(CUT)) {
                continue;
            }
            if (isFigure(words.get(i))) {
                figure = figure < 0 ? i : figure;
            } else if (i > 0 && i < words.size() - 1 && isFigure(words.get(i - 1)) && isFigure(words.get(i + 1))) {
                between = i;
            } else {
                return i == 0 && figure < 0 ? -1 : i;
            }
        }
        return between >= 0 ? between : figure;
    }

    private static boolean isFigure(String word) {
        return word.chars().anyMatch(Character::isDigit);
    }

    /** All that there is room for is the first word, by its letters if need be. */
    private static String firstWord(String word, Predicate<String> fits) {
        if (word.chars().noneMatch(Character::isLetter)) {
            return word;
        }
        int keep = word.length();
        while (keep > 1 && !fits.test(word.substring(0, keep) + CUT)) {
            keep--;
        }
        return word.substring(0, keep) + CUT;
    }

    /**
     * The ellipsis stands at the word before, once for all that are left out there; clear of a figure that begins with
     * its point, which would be lost among the others.
     */
    private static String joined(List<String> words) {
        return String.join(" ", words)
                .replaceAll(CUT + "( " + CUT + ")+", CUT)
                .replaceAll("[,;:]? " + CUT, CUT)
                .replaceAll("^" + CUT + " (?!\\.)", CUT);
    }
}
