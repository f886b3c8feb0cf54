package org.tenthwise.app.ui.form;

import java.util.Optional;
import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.shell.Heading;
import org.tenthwise.model.words.Words;

/** The heading line of a screen about one run: the way back, what the screen is for, and which run it is. */
public final class RunHeading {

    private RunHeading() {}

    public static Heading of(String title, ObservableValue<Optional<State>> state, Words words, Runnable back) {
        return titled(title, words, back)
                .cell(
                        words.say("ask.part"),
                        said(
                                state,
                                run -> words.say(
                                        "ask.part-revision",
                                        run.sheet().plan().part().number(),
                                        run.sheet().plan().part().revision())))
                .cell(
                        words.say("ask.serial"),
                        said(state, run -> run.sheet().run().begun().serial()))
                .cell(words.say("ask.by"), said(state, run -> run.sheet().run().by()));
    }

    /** A heading that names no run. */
    public static Heading titled(String title, Words words, Runnable back) {
        Label label = new Label(words.readable(title));
        label.getStyleClass().add("heading");
        label.setMinWidth(Label.USE_PREF_SIZE);
        StackPane cell = new StackPane(label);
        cell.setAlignment(Pos.CENTER_LEFT);
        return new Heading().back(words, back).cell(cell);
    }

    private static ObservableValue<String> said(ObservableValue<Optional<State>> state, Function<State, String> words) {
        return state.map(run -> run.map(words).orElse(""));
    }
}
