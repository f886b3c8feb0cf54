package org.tenthwise.app.ui.theme;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** A number in a ring, as it stands on the drawing: what is ringed is a balloon, what is not is the order of work. */
public final class Ringed extends Label {

    public Ringed(String... styles) {
        getStyleClass().addAll(styles);
        getStyleClass().add("ringed");
        setMinWidth(Region.USE_PREF_SIZE);
        show(Optional.empty());
    }

    /** Takes no room where there is none. */
    public void show(Optional<String> balloon) {
        setText(balloon.orElse(""));
        setVisible(balloon.isPresent());
        setManaged(balloon.isPresent());
    }
}
