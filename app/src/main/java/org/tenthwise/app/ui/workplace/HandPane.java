package org.tenthwise.app.ui.workplace;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.Keypad;
import org.tenthwise.app.ui.keys.Readout;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;

/**
 * What lies under the hand: the number pad with its readout, or a question with what there is to choose from; the key
 * that leads on at the same height in both.
 */
public final class HandPane extends StackPane {

    private final VBox pad;
    private final VBox ask;
    private final Label question = Texts.label("", "heading");

    /**
     * @param keypad has a key that leads on
     * @param choices what there is to choose from
     * @param lead leads on from the question
     */
    public HandPane(Readout readout, Keypad keypad, Region choices, Key lead) {
        getStyleClass().add("hand-panel");
        keypad.setMinHeight(Region.USE_PREF_SIZE);
        VBox.setVgrow(readout, Priority.ALWAYS);
        readout.setMaxHeight(ScreenSizes.READOUT_MOST);
        VBox.setVgrow(choices, Priority.ALWAYS);
        lead.getStyleClass().add("answer");
        pad = new VBox(ScreenSizes.GAP, readout, keypad);
        pad.setAlignment(Pos.BOTTOM_LEFT);
        ask = new VBox(question, choices, lead);
        ask.getStyleClass().add("ask");
        ask.setVisible(false);
        getChildren().addAll(pad, ask);
        focusStays(lead);
    }

    /** Lets figures be typed. */
    public void showPad() {
        turnTo(pad, ask, () -> {});
    }

    /** @param offer lays out what there is to choose from */
    public void ask(String words, Runnable offer) {
        question.setText(words);
        turnTo(ask, pad, offer);
    }

    /** Whether something is asked, rather than figures typed. */
    public boolean asks() {
        return ask.isVisible();
    }

    private void turnTo(VBox shown, VBox hidden, Runnable offer) {
        boolean focusHere = holdsFocus(this);
        offer.run();
        hidden.setVisible(false);
        shown.setVisible(true);
        if (focusHere && !holdsFocus(shown)) {
            requestFocus();
        }
    }

    /**
     * The focus stays here when the key that has it can be pressed no more: the tabulator leads to the next key here,
     * not to the first of the screen.
     */
    public void focusStays(Key key) {
        key.disabledProperty().subscribe(disabled -> {
            if (disabled && holdsFocus(key)) {
                requestFocus();
            }
        });
    }

    private static boolean holdsFocus(Node part) {
        Node at = part.getScene() == null ? null : part.getScene().getFocusOwner();
        while (at != null && at != part) {
            at = at.getParent();
        }
        return at != null;
    }
}
