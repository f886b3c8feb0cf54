package org.tenthwise.app.ui.home;

import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.tenthwise.model.words.Words;

/** What a run is found by. */
public final class FindHints extends VBox {

    public FindHints(Words words) {
        super(16);
        for (String hint : new String[] {"find.by", "find.scanner"}) {
            Label label = new Label(words.say(hint));
            label.getStyleClass().add("middling");
            label.setWrapText(true);
            label.setMinHeight(USE_PREF_SIZE);
            getChildren().add(label);
        }
    }
}
