package org.tenthwise.app.ui.theme;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Word;

/** Words on a screen, which wrap and are never cut, by the type classes of {@link Theme}. */
public final class Texts {

    private Texts() {}

    public static Label label(String text, String... styles) {
        Label label = new Label(text);
        label.getStyleClass().addAll(styles);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    /** The class of words in the colour of a verdict. */
    public static String style(VerdictKind verdict) {
        return Word.of(verdict);
    }
}
